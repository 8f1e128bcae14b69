import type { FastifyPluginAsyncZod } from 'fastify-type-provider-zod';
import * as z from 'zod/mini';
import type { Count, CountBy, ReviewCounts } from '../../../engine/desk/index.ts';
import type { Built } from '../built.ts';
import { plainDocument } from '../document.tsx';
import type { WebParts } from '../parts.ts';
import { signedIn } from '../session.ts';

const DAY = String.raw`\d{4}-\d\d-\d\d`;
const day = z.optional(z.string().check(z.regex(new RegExp(`^${DAY}$`))));
const what = z.optional(z.string().check(z.minLength(1), z.maxLength(500)));
const Asked = z.object({ from: day, to: day, verdict: what, person: what, part: what, unit: what });
type Asked = z.infer<typeof Asked>;

const KINDS: readonly CountBy[] = ['verdict', 'person', 'part', 'unit'];
const HEADS: Readonly<Record<CountBy, string>> = {
  verdict: 'Verdicts',
  person: 'People',
  part: 'Parts',
  unit: 'Units',
};
/** Days that are counted where nothing else is asked for. */
const DAYS = 90;

/** Counts of ended jobs. Each count is a link that filters by it: no script, so keyboard and history work by themselves. */
export const counts =
  ({ desk, clock }: WebParts, built: Built): FastifyPluginAsyncZod =>
  async (app) => {
    app.get('/review/counts', { schema: { hide: true, querystring: Asked } }, async (request, reply) => {
      const to = request.query.to ?? clock().toISOString().slice(0, 10);
      const from = request.query.from ?? new Date(clock().getTime() - DAYS * 86_400_000).toISOString().slice(0, 10);
      const asked = { ...request.query, from, to };
      const also = KINDS.flatMap((by): Count[] => (asked[by] === undefined ? [] : [{ by, what: asked[by] }]));
      const found = await desk.review.counts(signedIn(request).id, { from, to, also });
      reply.type('text/html');
      return plainDocument(built, 'Counts', <Counts asked={asked} found={found} />);
    });
  };

/** The same question with one thing more, another, or less. */
function hrefOf(asked: Asked, change: Partial<Asked>): string {
  const query = new URLSearchParams();
  for (const [key, value] of Object.entries({ ...asked, ...change })) if (value !== undefined) query.set(key, value);
  return `/review/counts?${query}`;
}

function Counts({ asked, found }: { asked: Asked; found: ReviewCounts }) {
  const filters = KINDS.filter((by) => asked[by] !== undefined);
  const nameOf = (by: CountBy): string | undefined =>
    found.groups.find((group) => group.by === by)?.counts.find((one) => one.what === asked[by])?.name;
  return (
    <div class="counts">
      <p class="row">
        <a class="key" href="/review">
          Review
        </a>
      </p>
      <form method="get" action="/review/counts" class="words">
        <label for="from">From this day (year-month-day)</label>
        <input id="from" name="from" pattern={DAY} value={asked.from} />
        <label for="to">To this day</label>
        <input id="to" name="to" pattern={DAY} value={asked.to} />
        {filters.map((by) => (
          <input key={by} type="hidden" name={by} value={asked[by]} />
        ))}
        <button type="submit" class="key main">
          Count
        </button>
      </form>
      {filters.length > 0 && (
        <p class="row">
          {filters.map((by) => (
            <a key={by} class="key" href={hrefOf(asked, { [by]: undefined })}>
              {`Without: ${nameOf(by) ?? asked[by]}`}
            </a>
          ))}
        </p>
      )}
      {found.groups.map(({ by, counts: of }) => (
        <section key={by} aria-labelledby={by}>
          <h2 id={by}>{HEADS[by]}</h2>
          {of.length === 0 && <p>Nothing ended in these days.</p>}
          <ul>
            {of.map(({ what: id, name, jobs }) => (
              <li key={id}>
                <a href={hrefOf(asked, { [by]: id })}>{name}</a>
                <strong>{jobs}</strong>
              </li>
            ))}
          </ul>
        </section>
      ))}
      {found.jobs.length > 0 && (
        <section aria-labelledby="jobs">
          <h2 id="jobs">The last of them</h2>
          <ul>
            {found.jobs.map(({ job, title, state }) => (
              <li key={job}>
                <a href={`/review/${encodeURIComponent(job)}`}>{title}</a>
                <span>{state}</span>
              </li>
            ))}
          </ul>
        </section>
      )}
    </div>
  );
}

import type { AwaitedLine } from '../../../engine/desk/types.ts';

const deskOf = (job: string): string => `/review/${encodeURIComponent(job)}`;

/** Where somebody waits for an approval, above whatever page a senior looks at, until one has given it. */
export function Awaited({ lines }: { readonly lines: readonly AwaitedLine[] }) {
  // On its own desk it is decided already.
  const others = lines.filter(({ job }) => location.pathname !== deskOf(job));
  const [first] = others;
  if (!first) return null;
  // A ticket or a phone needs the room: one key, to the call, or to the queue, where they stand first.
  const brief = document.querySelector('.ticket') !== null || matchMedia('(max-width: 48rem)').matches;
  return (
    <section class="awaited" aria-label="Waiting for an approval" role="status">
      {brief ? (
        <a class="key" href={others.length === 1 ? deskOf(first.job) : '/review'}>
          {others.length === 1 ? `Waiting for your word: ${first.title}` : `${others.length} calls wait for your word`}
        </a>
      ) : (
        <ul>
          {others.map((line) => (
            <Line key={line.job} line={line} />
          ))}
        </ul>
      )}
    </section>
  );
}

const Line = ({ line: { job, title, who, what } }: { readonly line: AwaitedLine }) => (
  <li>
    <p>
      <strong>{`Waiting for your word: ${title}.`}</strong>
      {` ${what}`}
      {who.length > 0 && ` (${who.join(', ')})`}
    </p>
    <a class="key" href={deskOf(job)}>
      Look at it
    </a>
  </li>
);

import type { AwaitedLine } from '../../../engine/desk/types.ts';

/** Where somebody waits for an approval, above whatever page a senior looks at, until one has given it. */
export const Awaited = ({ lines }: { readonly lines: readonly AwaitedLine[] }) => (
  <section class="awaited" aria-label="Waiting for an approval" role="status">
    <ul>
      {lines.map(({ job, title, who, what }) => {
        const desk = `/review/${encodeURIComponent(job)}`;
        return (
          <li key={job}>
            <p>
              <strong>{`Waiting for your word: ${title}.`}</strong>
              {` ${what}`}
              {who.length > 0 && ` (${who.join(', ')})`}
            </p>
            {/* There it is decided already. */}
            {location.pathname !== desk && (
              <a class="key" href={desk}>
                Look at it
              </a>
            )}
          </li>
        );
      })}
    </ul>
  </section>
);

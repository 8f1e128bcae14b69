import type { Board, LowStock } from '../../../engine/desk/types.ts';

/** Who can be sent, and the day of each. */
export function CrewPanel({ board: { crew, jobs } }: { board: Board }) {
  const titleOf = (id: string): string => jobs.find(({ job }) => job === id)?.title ?? id;
  return (
    <section class="crew" aria-label="Crew">
      <h2>Crew</h2>
      {crew.length === 0 && <p>Nobody is sent to calls yet.</p>}
      {crew.map(({ id, name, certified, available, on, day }) => (
        <article key={id}>
          <h3>{name}</h3>
          <p>
            {available || on === null ? 'Free' : `On: ${titleOf(on)}`}
            {certified && ' · refrigerant certification'}
          </p>
          {day.length > 0 && (
            <ol>
              {day.map((job) => (
                <li key={job}>
                  <a href={`/jobs/${encodeURIComponent(job)}`}>{titleOf(job)}</a>
                </li>
              ))}
            </ol>
          )}
        </article>
      ))}
    </section>
  );
}

export const LowPanel = ({ low }: { low: readonly LowStock[] }) => (
  <section class="crew" aria-label="Low stock">
    <h2>Low stock</h2>
    {low.length === 0 && <p>Nothing runs out.</p>}
    {low.map(({ truck, item, left }) => (
      <p key={`${truck} ${item}`}>{`${truck}: ${item}, ${left} left`}</p>
    ))}
  </section>
);

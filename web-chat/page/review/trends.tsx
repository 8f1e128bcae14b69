import type { ReviewView } from '../../../engine/desk/types.ts';

/** What was read on this unit over its visits: a small line, and the figures that it is drawn of. */
export const Trends = ({ trends }: { trends: ReviewView['trends'] }) =>
  trends.length === 0 ? null : (
    <section class="trends" aria-labelledby="unit">
      <h2 id="unit" tabIndex={-1}>
        This unit over its visits
      </h2>
      <div class="trend-list">
        {trends.map(({ name, visits, picture }) => (
          <div key={name} class="trend">
            {/* Markup as it is: drawn by the engine, which escapes every word in it. */}
            {picture && <div dangerouslySetInnerHTML={{ __html: picture.svg }} />}
            <table>
              <caption>{name}</caption>
              <thead>
                <tr>
                  <th scope="col">Visit</th>
                  <th scope="col">Reading</th>
                  <th scope="col">What</th>
                </tr>
              </thead>
              <tbody>
                {visits.map(({ at, reading, what }, i) => (
                  <tr key={`${at} ${i}`}>
                    <th scope="row">{at.slice(0, 10)}</th>
                    <td>{reading}</td>
                    <td>{what}</td>
                  </tr>
                ))}
              </tbody>
            </table>
          </div>
        ))}
      </div>
    </section>
  );

/** A finished call in words for the customer and for the shop, folded until somebody wants to read it. */
import type { JobView } from '../../../engine/desk/types.ts';
import { Reports } from '../report/reports.tsx';
import type { Me } from '../state.ts';

const Folded = ({ title, lines }: { title: string; lines: readonly string[] }) => (
  <details>
    <summary>{title}</summary>
    {lines.map((line, i) => (
      <p key={i}>{line}</p>
    ))}
  </details>
);

export const CloseOut = ({ view: { job, summary }, me }: { view: JobView; me: Me }) =>
  summary && (
    <section class="close-out">
      <Folded title="For the customer" lines={summary.customer} />
      <Folded title="For the shop" lines={summary.shop} />
      <Reports job={job} me={me} />
    </section>
  );

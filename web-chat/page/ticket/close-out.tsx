/** A finished call in words for the customer and for the shop, folded until somebody wants to read it. */
import type { JobView } from '../../../engine/desk/types.ts';

const Folded = ({ title, lines }: { title: string; lines: readonly string[] }) => (
  <details>
    <summary>{title}</summary>
    {lines.map((line, i) => (
      <p key={i}>{line}</p>
    ))}
  </details>
);

export const CloseOut = ({ summary }: { summary: JobView['summary'] }) =>
  summary && (
    <section class="close-out">
      <Folded title="For the customer" lines={summary.customer} />
      <Folded title="For the shop" lines={summary.shop} />
    </section>
  );

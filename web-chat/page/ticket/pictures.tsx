/** Line drawings beside the words, ink on the ticket. Each carries its text equivalent; each can be folded away. */
import type { Prompt } from '../../../engine/index.ts';

type Pictures = Prompt['pictures'];
/** Those of the question itself, or of one verdict. */
export const picturesOf = ({ pictures }: Prompt, verdict: string | null): Pictures =>
  pictures.filter((each) => each.verdict === verdict);

export const Pictures = ({ pictures, open = true }: { pictures: Pictures; open?: boolean }) => (
  <>
    {pictures.map(({ title, svg }, i) => (
      <details key={`${i} ${title}`} class="picture" open={open}>
        <summary>{title}</summary>
        {/* Markup as it is: drawn by the engine, which escapes every word in it. */}
        <div dangerouslySetInnerHTML={{ __html: svg }} />
      </details>
    ))}
  </>
);

/** The words of a question. A list to pick from stays in view; what follows it, and in brief mode all the rest, folds. */

/** Lines after a list up to which they are not worth a fold. */
const FEW = 1;

const isNumbered = (text: string): boolean => /^\d+\. /.test(text);

export function Body({ lines, brief }: { lines: readonly string[]; brief: boolean }) {
  if (lines.length === 0) return null;
  const last = lines.findLastIndex(isNumbered);
  if (brief) {
    const rest = lines.filter((text) => !isNumbered(text));
    return (
      <>
        <Lines lines={lines.filter(isNumbered)} />
        {rest.length > 0 && <Folded title="In full" lines={rest} />}
      </>
    );
  }
  const after = last < 0 ? [] : lines.slice(last + 1);
  const folds = after.length > FEW;
  return (
    <>
      <Lines lines={folds ? lines.slice(0, last + 1) : lines} />
      {folds && <Folded title={`What else was looked at: ${after.length} lines`} lines={after} />}
    </>
  );
}

const Folded = ({ title, lines }: { title: string; lines: readonly string[] }) => (
  <details class="fold">
    <summary>{title}</summary>
    <Lines lines={lines} />
  </details>
);

const Lines = ({ lines }: { lines: readonly string[] }) =>
  lines.length === 0 ? null : (
    <div class="body">
      {lines.map((text, i) => (
        <Line key={i} text={text} />
      ))}
    </div>
  );

/** A line of a numbered list hangs on its number, so that it is found again where it is picked. */
function Line({ text }: { text: string }) {
  const [, number, words] = /^(\d+\.) (.*)$/s.exec(text) ?? [];
  if (number === undefined) return <p>{text}</p>;
  return (
    <p class="numbered">
      <strong>{number}</strong> <span>{words}</span>
    </p>
  );
}

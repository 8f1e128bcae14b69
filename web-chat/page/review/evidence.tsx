/** The evidence table: each answer, and every reading of it beside its limits, its doubt, and where they come from. */
import type { EvidenceRow, JobView } from '../../../engine/desk/types.ts';
import { EntryLink } from './attention.tsx';
import { Photos, STANDING } from './conversation.tsx';

interface EvidenceProps {
  readonly view: JobView;
  readonly rows: readonly EvidenceRow[];
}

export const EvidenceTable = ({ view, rows }: EvidenceProps) => (
  <section class="evidence" aria-labelledby="evidence">
    <h2 id="evidence" tabIndex={-1}>
      Evidence
    </h2>
    <table>
      <thead>
        <tr>
          {['Step', 'Reading', 'Limits', 'Doubt', 'Source'].map((head) => (
            <th key={head} scope="col">
              {head}
            </th>
          ))}
        </tr>
      </thead>
      {rows.map((row) => (
        <Step key={row.seq} row={row} view={view} />
      ))}
    </table>
  </section>
);

function Step({ row, view }: { row: EvidenceRow; view: JobView }) {
  const standing = row.ended ?? STANDING[row.standing];
  return (
    <tbody data-standing={row.ended === null ? row.standing : 'kept'}>
      <tr class="step">
        <th scope="rowgroup" colSpan={5}>
          {row.title}
          <EntryLink seq={row.seq} words={`Entry ${row.seq}`} />
          {row.gate && <small>A proof of dead.</small>}
          {row.says.length > 0 && <small>{row.says.join(' · ')}</small>}
          {standing !== null && <small class="standing">{standing}</small>}
          <Photos job={view.job} line={row} />
        </th>
      </tr>
      {row.findings.map((finding, i) => (
        <Finding key={i} finding={finding} />
      ))}
    </tbody>
  );
}

const Finding = ({ finding: f }: { finding: EvidenceRow['findings'][number] }) => (
  <>
    <tr>
      <th scope="row">{f.name}</th>
      <td data-label="Reading">
        {f.reading}
        <strong class="word">{f.word}</strong>
      </td>
      <td data-label="Limits">{f.limits ?? '–'}</td>
      <td data-label="Doubt">{f.doubt ?? '–'}</td>
      <td data-label="Source">{f.source ?? '–'}</td>
    </tr>
    <tr class="because">
      <td colSpan={5}>
        {f.text}
        {f.picture && (
          <details class="picture">
            <summary>{f.picture.title}</summary>
            {/* Markup as it is: drawn by the engine, which escapes every word in it. */}
            <div dangerouslySetInnerHTML={{ __html: f.picture.svg }} />
          </details>
        )}
      </td>
    </tr>
  </>
);

import type { Recomputed } from '../../../engine/desk/types.ts';
import { EntryLink } from './attention.tsx';

const short = (hash: string): string => hash.slice(0, 12);

/** What going over the record anew came to: the same, or the first entry that differs. */
export const RecomputedNow = ({ of }: { of: Recomputed }) => (
  <div class="info" role="status">
    {of.difference === null ? (
      <p>
        <strong>The same, byte for byte.</strong>{' '}
        {`${of.entries} entries and ${of.verdicts.length} verdicts were gone over.`}
      </p>
    ) : (
      <>
        <p>
          <strong>It differs</strong> at <EntryLink seq={of.difference.at} words={`entry ${of.difference.at}`} />
        </p>
        <p>{`Recorded: ${of.difference.old}`}</p>
        <p>{`Computed now: ${of.difference.now}`}</p>
      </>
    )}
    {of.verdicts.length > 0 && (
      <ul>
        {of.verdicts.map(({ seq, title, recorded, computed }) => (
          <li key={seq}>
            {`#${seq} ${title}: ${recorded === computed ? `same, ${short(recorded)}` : `recorded ${short(recorded)}, now ${short(computed)}`}`}
          </li>
        ))}
      </ul>
    )}
  </div>
);

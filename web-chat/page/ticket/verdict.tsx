/** A verdict with what it rests on: words in small capitals with a mark, not colours. */
import type { Conclusion, Prompt } from '../../../engine/index.ts';
import { Pictures } from './pictures.tsx';

const WHO = {
  junior: null,
  senior: 'A senior confirms this before anything is done.',
  certified: 'A certified person decides this.',
} as const;
const [TICK, CROSS, ABOUT] = ['M2 9l4 4 8-11', 'M3 3l10 11M13 3L3 14', 'M1 6c3-3 4 1 7-1M1 11c3-3 4 1 7-1'];
/** Drawn, because the type has no such signs: a tick, a cross, and "about" before either. */
const MARKS: Readonly<Record<string, readonly string[]>> = {
  pass: [TICK],
  'conditional pass': [ABOUT, TICK],
  'conditional fail': [ABOUT, CROSS],
  fail: [CROSS],
  undecided: ['M4 5c0-5 9-4 8 1-1 3-4 2-4 5M8 14v1'],
};

const Mark = ({ word }: { word: string }) => (
  <>
    {MARKS[word]?.map((path) => (
      <svg key={path} class="mark-sign" viewBox="0 0 16 16" width="16" height="16" aria-hidden="true" focusable="false">
        <path d={path} />
      </svg>
    ))}
  </>
);

interface VerdictProps {
  readonly verdict: Conclusion;
  readonly pictures: Prompt['pictures'];
}

export const Verdict = ({ verdict, pictures }: VerdictProps) => (
  <section class="verdict" aria-label={`Verdict: ${verdict.title}`}>
    <h2>{verdict.title}</h2>
    {verdict.says.map((say) => (
      <p key={say}>{say}</p>
    ))}
    {WHO[verdict.who] !== null && <p class="who">{WHO[verdict.who]}</p>}
    {verdict.findings.length > 0 && <Findings verdict={verdict} />}
    <Pictures pictures={pictures} />
    {verdict.next.length > 0 && (
      <>
        <h3>What is next</h3>
        <ul>
          {verdict.next.map((next) => (
            <li key={next}>{next}</li>
          ))}
        </ul>
      </>
    )}
  </section>
);

const Findings = ({ verdict }: { verdict: Conclusion }) => (
  <table>
    <caption>What it rests on</caption>
    <thead>
      <tr>
        <th scope="col">Part</th>
        <th scope="col">Reading</th>
        <th scope="col">Limits</th>
      </tr>
    </thead>
    {verdict.findings.map((finding, i) => (
      <tbody key={i}>
        <tr>
          <th scope="row">{finding.name}</th>
          <td>
            {finding.reading}
            {finding.doubt !== null && <small>{finding.doubt}</small>}
          </td>
          <td>{finding.limits ?? '–'}</td>
        </tr>
        <tr>
          <td colSpan={3}>
            <strong class="word">
              <Mark word={finding.word} />
              {finding.word}
            </strong>{' '}
            {finding.text}
            {finding.source !== null && <small>{`Source: ${finding.source}`}</small>}
          </td>
        </tr>
      </tbody>
    ))}
  </table>
);

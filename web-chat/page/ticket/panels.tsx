/** Signal panels: word, shape and colour as ANSI Z535 and ISO 3864 assign them, so that each reads in black and white. */
import type { Callout, Conclusion, Notice } from '../../../engine/index.ts';

const WORDS = { danger: 'DANGER', warning: 'WARNING', caution: 'CAUTION', notice: 'NOTICE' } as const;

export const Panel = ({ level, text }: Callout) => (
  <div class="panel" data-level={level}>
    <p class="signal">
      {level === 'notice' ? <Circle /> : <Triangle />}
      {WORDS[level]}
    </p>
    <p>{text}</p>
  </div>
);

/** The safety alert symbol, which a notice doesn't carry. */
const Triangle = () => (
  <svg viewBox="0 0 24 24" width="24" height="24" aria-hidden="true" focusable="false">
    <path d="M12 2 23 21.5H1Z" class="shape" />
    <path d="M10.8 8h2.4l-.4 7h-1.6Zm0 8.6h2.4V19h-2.4Z" class="mark" />
  </svg>
);
const Circle = () => (
  <svg viewBox="0 0 24 24" width="24" height="24" aria-hidden="true" focusable="false">
    <circle cx="12" cy="12" r="11" class="shape" />
    <path d="M10.7 5h2.6v2.6h-2.6Zm0 4.4h2.6V19h-2.6Z" class="mark" />
  </svg>
);

/** What happened and has to be read before the question. */
export const Notices = ({ notices }: { notices: readonly Notice[] }) =>
  notices.length === 0 ? null : (
    <ul class="notices">
      {notices.map(({ code, text }) => (
        <li key={code + text}>{text}</li>
      ))}
    </ul>
  );

const WHO = {
  junior: null,
  senior: 'A senior confirms this before anything is done.',
  certified: 'A certified person decides this.',
} as const;
const MARKS: Readonly<Record<string, string>> = {
  pass: '✓',
  'conditional pass': '≈✓',
  'conditional fail': '≈✗',
  fail: '✗',
  undecided: '?',
};

export const Verdict = ({ verdict }: { verdict: Conclusion }) => (
  <section class="verdict" aria-label={`Verdict: ${verdict.title}`}>
    <h2>{verdict.title}</h2>
    {verdict.says.map((say) => (
      <p key={say}>{say}</p>
    ))}
    {WHO[verdict.who] !== null && <p class="who">{WHO[verdict.who]}</p>}
    {verdict.findings.length > 0 && <Findings verdict={verdict} />}
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
              {MARKS[finding.word] !== undefined && <span aria-hidden="true">{MARKS[finding.word]} </span>}
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

/** Signal panels: word, shape and colour as ANSI Z535 and ISO 3864 assign them, so that each reads in black and white. */
import type { Callout, Notice } from '../../../engine/index.ts';

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
export const Triangle = () => (
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
      {notices.map(({ text }, i) => (
        <li key={i}>{text}</li>
      ))}
    </ul>
  );

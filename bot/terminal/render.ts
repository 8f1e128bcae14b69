/** Prompt → text. Every kind of prompt and of part has its words here; a missing one does not compile. */
import { type Callout, type Part, type Prompt, sayKey, sayKind, sayUnit } from '../../engine/index.ts';
import { stripLine, type Wall, wallTime } from './isolation.ts';
import { numbered } from './options-by-number.ts';
import { visible } from './safe-text.ts';
import { verdictLines } from './verdict.ts';

/** What is not in the prompt: who is who, who reads this, the words of a senior's question, and the wall clock. */
export interface Surroundings {
  readonly me: string;
  readonly names: (id: string) => string;
  readonly question: string | null;
  readonly wall?: Wall;
}

const SIGNAL: Readonly<Record<Callout['level'], string>> = {
  danger: 'DANGER',
  warning: 'WARNING',
  caution: 'CAUTION',
  notice: 'NOTICE',
};

/** The whole question, one line of text for each line of meaning, nothing wrapped and no control characters. */
export function render(prompt: Prompt, around: Surroundings): string {
  const { callouts, notices, verdicts, body, pictures } = prompt;
  return [
    ...verdicts.flatMap((verdict) => [...verdictLines(verdict), '']),
    heading(prompt),
    prompt.title,
    ...strip(prompt, around),
    ...callouts.map(({ level, text }) => `${SIGNAL[level]}: ${text}`),
    ...notices.map(({ text }) => `» ${text}`),
    ...body.map((text) => `  ${text}`),
    // Those of a verdict say what its findings say.
    ...pictures.flatMap(({ verdict, text }) => (verdict === null ? [`  Picture: ${text}`] : [])),
    ...asked(prompt, around),
    ...partsLines(prompt),
    ...hints(prompt, around),
  ]
    .map(visible)
    .join('\n');
}

/** What heads the line that is typed: the isolation of each cabinet. */
export const strip = (prompt: Prompt, { names, wall = wallTime }: Surroundings): string[] =>
  prompt.isolation.map((line) => visible(stripLine(line, names, wall)));

function heading(prompt: Prompt): string {
  const state = sayKind(prompt);
  return `── ${[...(state === null ? [] : [state]), prompt.progress.label].join(' · ')} ──`;
}

function asked({ question }: Prompt, { question: words }: Surroundings): string[] {
  if (question === null) return [];
  return [`A senior asks: ${words ?? ''}`, '  Type reply and your answer.'];
}

function partsLines({ parts, title }: Prompt): string[] {
  const numbers = new Map(numbered(parts).map(({ part, option }, n) => [`${part} ${option.id}`, `${n + 1}.`]));
  const mark = (part: string, option: string): string => numbers.get(`${part} ${option}`) ?? '·';
  const width = Math.max(0, ...parts.map((part) => (part.kind === 'field' ? sayKey(part.key).length : 0)));
  // A part that repeats the title needs no heading of its own.
  return parts.flatMap((part) => partLines(part, { mark, width, headed: parts.length > 1 && part.ask !== title }));
}

interface Manner {
  readonly mark: (part: string, option: string) => string;
  /** Of the widest name of a field. */
  readonly width: number;
  readonly headed: boolean;
}

function partLines(part: Part, { mark, width, headed }: Manner): string[] {
  const optional = part.optional ? ', may be left out' : '';
  switch (part.kind) {
    case 'choose': {
      const several = part.several ? ', one or more' : '';
      const was = part.options.flatMap((o) => (part.remembered.includes(o.id) ? [o.label] : []));
      return [
        ...(headed || part.several ? [`  ${part.ask}${several}${optional}:`] : []),
        ...part.options.map((o) => `  ${mark(part.key, o.id).padStart(3)} ${o.label}`),
        ...(was.length === 0 ? [] : [`      last time: ${was.join(', ')}`]),
      ];
    }
    case 'confirm':
    case 'act':
      return [
        ...(headed ? [`  ${part.ask}${optional}:`] : []),
        ...part.options.map((o) => `  ${mark(part.key, o.id).padStart(3)} ${o.label}`),
      ];
    case 'field': {
      const other = part.prefers === undefined ? '' : `, or ${part.prefers} typed behind it`;
      const unit = part.unit === 'count' ? '' : `, ${sayUnit(part.unit)}${other}`;
      const needed = part.unitNeeded ? ', type the unit' : '';
      const over = part.over ? ', or ol' : '';
      const was = part.remembered === null ? '' : `, last time ${part.remembered}`;
      return [`  ${sayKey(part.key).padEnd(width)}  ${part.ask}${unit}${needed}${over}${optional}${was}`];
    }
    case 'label':
      return [
        `  ${part.ask}${optional}: as printed, for example 40/5 MFD ±6% 440 VAC`,
        ...(part.remembered === null ? [] : [`      last time: ${part.remembered}`]),
      ];
    case 'photo':
      return [`  ${part.ask}${optional}: by the web chat, not at this terminal`];
    case 'note':
      return [`  ${part.ask}${optional}: in your own words`];
  }
}

/** How it may be typed. */
function hints(prompt: Prompt, { me, names }: Surroundings): string[] {
  const { kind, parts, line, holder, skippable, amends } = prompt;
  if (kind === 'finished' || kind === 'signed')
    return [
      'Notes are still taken: note and the words. summary shows the call for the customer and the shop. quit leaves.',
    ];
  if (holder !== null && holder !== me) return [`Only ${names(holder)} answers here, whose lock it is.`];
  const typed = parts.filter((p) => p.kind !== 'photo');
  const options = typed.filter((p) => 'options' in p);
  const byNumber = numbered(parts).length > 0;
  const how =
    typed.length === 0
      ? []
      : line !== null && options.length === 0
        ? [`Type in one line: ${line}`]
        : typed.length > 1
          ? [`Type one line for all of it, parted by commas${byNumber ? '; the numbers do as well as the words' : ''}.`]
          : byNumber
            ? ['Type a number or the words.']
            : [];
  const skip = skippable ? [`Where you can’t: skip and the reason.`] : [];
  return [...how, ...(amends === null ? skip : ['Enter alone leaves the answer as it is.'])];
}

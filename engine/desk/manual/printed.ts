/** A page of the manual as a person reads it, in Markdown: everything that its steps say, ask, compare with and lead to. */
import { classOf } from '../../class.ts';
import { QUANTITIES } from '../../quantity.ts';
import type { AskStep, Example, FoundStep, JudgeStep, Limit, Manual, PartSpec, Step } from '../../vocabulary.ts';
import { type Page, waysOf } from './ways.ts';

/** The cover: what holds for the whole manual. */
export function printCover(manual: Manual): string {
  const { isolation, cabinets, endings, labelTolerance } = manual;
  const leaving = Object.entries(isolation.leaving) as [
    string,
    { notice: string; forget: string; tries?: { times: number; held: string } },
  ][];
  return text([
    `# ${manual.title}`,
    '',
    `Manual \`${manual.id}\`, version ${manual.version}. Begins with the page \`${manual.root.id}\`.`,
    '',
    ...list([
      `Cabinets: ${Object.values(cabinets).join(', ')}.`,
      `Known from the unit’s record: ${manual.fromRecord.join(', ')}.`,
      `An isolation lasts ${limit(isolation.minutes)}`,
      `Where no tolerance is printed: ${limit(labelTolerance)}`,
    ]),
    '## Endings',
    '',
    ...list(Object.entries(endings).map(([id, e]) => `\`!${id}\` **${e.title}**: ${e.says}`)),
    '## Leaving make-dead',
    '',
    ...list(
      leaving.flatMap(([id, l]) => [
        `\`!${id}\`, again from \`${l.forget}\`: ${l.notice}`,
        ...(l.tries ? [`\`!${id}\`, after ${l.tries.times} tries: ${l.tries.held}`] : []),
      ]),
    ),
  ]);
}

export function printPage({ flow, gate }: Page): string {
  const { id, version, title, exits, needs, steps, examples = [] } = flow;
  return text([
    `# ${title}`,
    '',
    `Page \`${id}\`, version ${version}. Leaves by ${exits.map((x) => `\`!${x}\``).join(', ')}.${needs.length === 0 ? '' : ` Needs ${needs.join(', ')}.`}`,
    '',
    ...Object.entries(steps).flatMap(([name, step]) => [
      ...printStep(name, step, gate),
      'Ways on:',
      '',
      ...list(leads(step)),
    ]),
    ...(examples.length === 0 ? [] : ['## Worked calls', '', ...examples.flatMap(printExample)]),
  ]);
}

const text = (lines: readonly string[]): string => `${lines.join('\n').trimEnd()}\n`;
const list = (lines: readonly string[]): string[] => (lines.length === 0 ? [] : [...lines.map((l) => `- ${l}`), '']);
const limit = ({ value, unit, source }: Limit): string => `${value}\u2009${unit} (${source})`;
const leads = (step: Step): string[] => waysOf(step).map(({ by, to }) => `${by === '' ? 'then' : by} → \`${to}\``);

function printStep(name: string, step: Step, gate: boolean): string[] {
  switch (step.verb) {
    case 'include':
      return [
        `## ${name}: page`,
        '',
        `**${step.page.title}** (\`${step.page.id}\`)${step.again ? `, ${step.again.times} ${step.round ? 'rounds' : 'tries'} at most` : ''}.`,
        '',
        ...list(Object.entries(step.needs).map(([need, from]) => `${need} from \`${from}\``)),
      ];
    case 'judge':
      return [`## ${name}: decides by \`${step.judgement}\``, '', ...judging(step)];
    case 'found':
      return [`## ${name}: sorts by what was found`, '', ...sorting(step)];
    case 'verdict':
      return [
        `## ${name}: verdict \`${step.verdict}\``,
        '',
        `**${step.title}** ${WHO[step.who]}${step.raises ? ' Raised to a senior.' : ''}`,
        '',
        ...step.says.flatMap((line) => [line, '']),
        ...list(step.next),
      ];
    default:
      return [
        `## ${name}: ${step.verb}, ${classOf(step, gate)}${gate ? ', a gate' : ''}`,
        '',
        `**${step.say}**`,
        '',
        ...(step.body ?? []).flatMap((line) => [line, '']),
        ...(step.callouts ?? []).flatMap((c) => [`> ${c.level.toUpperCase()}: ${c.text}`, '']),
        ...('parts' in step ? list(Object.entries(step.parts).map(([key, part]) => asks(key, part, step))) : []),
        ...('shows' in step ? (step.shows ?? []) : []).flatMap((s) => [
          `Shows what \`${s.judgement}\` computes.`,
          '',
          ...limits(s.limits),
        ]),
        ...(step.why === undefined ? [] : [`Why: ${step.why}`, '']),
        ...(step.source ?? []).flatMap((source) => [`Source: ${source}`, '']),
      ];
  }
}
const WHO = {
  junior: 'Whoever measured may conclude it.',
  senior: 'A senior confirms it.',
  certified: 'A certified person decides it.',
} as const;

function judging(step: JudgeStep): string[] {
  const of = Object.entries(step.of).flatMap(([name, from]) => (from === null ? [] : [`${name} from \`${from}\``]));
  const says = Object.entries(step.says ?? {}).map(([outcome, words]) => `On ${outcome}: ${words}`);
  return [...list(of), ...limits(step.limits), ...list(says)];
}
const limits = (of: Readonly<Record<string, Limit>>): string[] =>
  list(Object.entries(of).map(([name, l]) => `Limit ${name}: ${limit(l)}`));
const sorting = (step: FoundStep): string[] =>
  list(Object.entries(step.among).map(([group, verdicts]) => `${group}: ${verdicts.join(', ')}`));

/** The options that decide the way are said with the ways on, a question that is the step's own is said above. */
function asks(key: string, part: PartSpec, step: AskStep): string {
  const kind = part.part === 'field' ? QUANTITIES[part.quantity].unit : part.part;
  const options = 'options' in part && step.by !== key ? Object.values(part.options ?? {}).map((o) => o.label) : [];
  const notes = [
    ...(part.optional ? ['may be left out'] : []),
    ...(part.unless === undefined ? [] : ['may be left out in a repeat']),
    ...(part.when ? [when(part.when)] : []),
    ...(part.as === undefined ? [] : [`kept for the job as ${part.as}${part.anew ? ', and asked anew' : ''}`]),
  ];
  return `\`${key}\`${part.ask === step.say ? ':' : ` ${part.ask},`} ${kind}${options.length === 0 ? '' : ` (${options.join(' · ')})`}${notes.map((n) => `; ${n}`).join('')}`;
}
function when(of: NonNullable<PartSpec['when']>): string {
  if ('again' in of) return 'only when entered again for its age';
  const what = 'fact' in of ? `${of.part} of ${of.fact}` : of.part;
  if ('above' in of)
    return `only where ${what} is above ${limit(of.above)}${of.below ? ` and below ${limit(of.below)}` : ''}`;
  if ('unless' in of) return `unless ${of.fact} shows two terminals`;
  if (of.is) return `only where ${what} is ${of.is.join(' or ')}`;
  return `only where ${what} is not ${('not' in of ? (of.not ?? []) : []).join(' or ')}`;
}

function printExample({ title, unit, lines, then, ends }: Example): string[] {
  const history = (unit?.history ?? []).map((p) => `${p.at.slice(0, 10)} ${p.item} ${p.what}`);
  return [
    `### ${title}`,
    '',
    ...(history.length === 0 ? [] : [`The unit’s record: ${history.join(', ')}.`, '']),
    '```text',
    ...lines,
    '```',
    '',
    `Verdicts: ${then.join(', ') || 'none yet'}. ${ends === undefined ? 'It goes on.' : `Ends \`!${ends}\`.`}`,
    '',
  ];
}

import type { Finding, Parts } from '../../schema.ts';
import { judgement, type Limit } from '../judgement.ts';
import { over, past, reads, untaken } from '../probing.ts';
import { figureOf, readingOf } from '../read.ts';
import { finding, say } from '../say.ts';

type DropLimits = Readonly<Record<'look' | 'replace' | 'open', Limit>>;
type Is = 'good' | 'look' | 'replace' | 'open' | 'undecided';
const POLES = { p1: 'First pole', p2: 'Second pole', p3: 'Third pole' } as const;

/**
 * Volts across each closed pole of a contactor under load. A third pole counts where somebody read one. A drop under load
 * is one only while amps flow, by the `figures` of the same sitting; and a pole that reads the line's volts is not closed:
 * it is open, or the contactor never pulled in. Neither replaces a contactor.
 */
export const contactDrop = judgement({
  id: 'contact-drop',
  semantics: 2,
  takes: ['poles', 'figures'],
  limits: ['look', 'replace', 'open', 'idle'],
  outcomes: ['good', 'look', 'replace', 'open', 'no-load', 'undecided'],
  run({ poles, figures }, limits) {
    const keys = (['p1', 'p2', 'p3'] as const).filter(
      (key) => key !== 'p3' || readingOf(poles, key, 'V').kind !== 'none',
    );
    const drawn = ['comp', 'comp2', 'comp3', 'fan'].flatMap((key) => figureOf(figures, key, 'A')?.abs() ?? []);
    const loaded = drawn.some((amps) => amps.gte(limits.idle.value));
    const lines = keys.map((key) => poleOf(poles, key, loaded, limits));
    const findings = lines.map((line) => line.finding);
    const any = (is: Is): boolean => lines.some((line) => line.is === is);
    if (any('open')) return { outcome: 'open', findings };
    if (!loaded) {
      const limit = `${say(limits.idle.value, 'A')} or more`;
      const text = 'No amps flow, or nobody read them: volts across a pole say nothing of its contact.';
      const { source } = limits.idle;
      const load = finding({ name: 'Load', reading: 'none', limits: limit, word: 'no load', text, source });
      return { outcome: 'no-load', findings: [...findings, load] };
    }
    return { outcome: (['replace', 'undecided', 'look'] as const).find(any) ?? 'good', findings };
  },
  probe: ({ look, replace, open, idle }) => {
    const figures = reads({ comp: '13.1', fan: '0.9' }, 'A');
    const at = (p1: Parameters<typeof past>[0], of: Parts = {}) => ({
      poles: { ...reads({ p1, p2: '0.1' }, 'V'), ...of },
      figures,
    });
    return [
      at(look.value),
      at(past(look.value, '0.01')),
      at(replace.value),
      at(past(replace.value, '0.01')),
      at(open.value),
      at(past(open.value, '-0.01')),
      at('0.1', reads({ p3: past(replace.value, '0.01') }, 'V')),
      at('0.1', { p2: over }),
      at(past(look.value, '0.01'), { p2: untaken }),
      { ...at(past(replace.value, '0.01')), figures: reads({ comp: '0', fan: idle.value }, 'A') },
      { ...at(past(replace.value, '0.01')), figures: reads({ comp: '0', fan: past(idle.value, '-0.01') }, 'A') },
      { ...at(past(replace.value, '0.01')), figures: {} },
      {},
    ];
  },
});

function poleOf(
  poles: Parts | undefined,
  key: keyof typeof POLES,
  loaded: boolean,
  { look, replace, open }: DropLimits,
): { is: Is; finding: Finding } {
  const name = POLES[key];
  const volts = figureOf(poles, key, 'V')?.abs() ?? null;
  const limits = `${say(look.value, 'V')} or less`;
  const line = (reading: string, word: string, text: string, source: string | null) =>
    finding({ name, reading, limits, word, text, source });
  if (volts === null)
    return { is: 'undecided', finding: line('no reading', 'missing', `${name} was not read under load.`, null) };
  const shown = say(volts, 'V');
  if (volts.gte(open.value)) {
    const text = `${name} reads ${shown}: that is no closed pole. It is open, the contactor is not in, or the leads sat elsewhere.`;
    return { is: 'open', finding: line(shown, 'open', text, open.source) };
  }
  if (!loaded)
    return { is: 'undecided', finding: line(shown, 'no load', `${name} reads ${shown} without a load.`, look.source) };
  if (volts.gt(replace.value)) {
    const text = `${name} drops ${shown} closed, more than ${say(replace.value, 'V')}. Replace the contactor; look at its terminals.`;
    return { is: 'replace', finding: line(shown, 'replace', text, replace.source) };
  }
  if (volts.gt(look.value)) {
    const text = `${name} drops ${shown} closed, more than ${say(look.value, 'V')}. Dead, look at contact and terminals.`;
    return { is: 'look', finding: line(shown, 'look', text, look.source) };
  }
  return { is: 'good', finding: line(shown, 'good', `${name} drops ${shown} closed, ${limits}.`, look.source) };
}

import type { Finding, Parts } from '../../schema.ts';
import { judgement, type Limit } from '../judgement.ts';
import { over, past, reads, untaken } from '../probing.ts';
import { figureOf, readingOf } from '../read.ts';
import { finding, say } from '../say.ts';

type DropLimits = Readonly<Record<'look' | 'replace', Limit>>;
const POLES = { p1: 'First pole', p2: 'Second pole', p3: 'Third pole' } as const;

/** Volts across each closed pole of a contactor under load. A third pole counts where somebody read one. */
export const contactDrop = judgement({
  id: 'contact-drop',
  semantics: 1,
  takes: ['poles'],
  limits: ['look', 'replace'],
  outcomes: ['good', 'look', 'replace', 'undecided'],
  run({ poles }, limits) {
    const keys = (['p1', 'p2', 'p3'] as const).filter(
      (key) => key !== 'p3' || readingOf(poles, key, 'V').kind !== 'none',
    );
    const lines = keys.map((key) => poleOf(poles, key, limits));
    const findings = lines.map((line) => line.finding);
    const worst = (['replace', 'undecided', 'look'] as const).find((is) => lines.some((line) => line.is === is));
    return { outcome: worst ?? 'good', findings };
  },
  probe: ({ look, replace }) => {
    const at = (p1: Parameters<typeof past>[0], of: Parts = {}) => ({
      poles: { ...reads({ p1, p2: '0.1' }, 'V'), ...of },
    });
    return [
      at(look.value),
      at(past(look.value, '0.01')),
      at(replace.value),
      at(past(replace.value, '0.01')),
      at('0.1', reads({ p3: past(replace.value, '0.01') }, 'V')),
      at('0.1', { p2: over }),
      at(past(look.value, '0.01'), { p2: untaken }),
      {},
    ];
  },
});

function poleOf(
  poles: Parts | undefined,
  key: keyof typeof POLES,
  { look, replace }: DropLimits,
): { is: 'good' | 'look' | 'replace' | 'undecided'; finding: Finding } {
  const name = POLES[key];
  const volts = figureOf(poles, key, 'V')?.abs() ?? null;
  const limits = `${say(look.value, 'V')} or less`;
  const line = (reading: string, word: string, text: string, source: string | null) =>
    finding({ name, reading, limits, word, text, source });
  if (volts === null)
    return { is: 'undecided', finding: line('no reading', 'missing', `${name} was not read under load.`, null) };
  const shown = say(volts, 'V');
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

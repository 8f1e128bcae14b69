import { shareOf } from '../../calc/amps.ts';
import { judgement } from '../judgement.ts';
import { chose, past, reads, untaken } from '../probing.ts';
import { chosenOf, figureOf } from '../read.ts';
import { finding, say } from '../say.ts';

/** What looks the same and has to be ruled out, each confirmed. */
const RULED = {
  valve: 'The reversing valve is not ruled out, or the unit’s kind was not said.',
  unloader: 'The unloader is not ruled out.',
  rotation: 'The direction of rotation is not ruled out.',
} as const;

/**
 * Beside a circuit whose suction is high and whose head is low: the compressor's amps (`amps`, part `comp`) against its
 * RLA (`plate`), and what was ruled out (`ruled`, part `ruled`: valve, unloader, rotation). Only all of it together shows a
 * compressor that does not pump.
 */
export const notPumping = judgement({
  id: 'not-pumping',
  semantics: 1,
  takes: ['amps', 'plate', 'ruled'],
  limits: ['usualLow'],
  outcomes: ['shown', 'not-shown', 'undecided'],
  run({ amps, plate, ruled }, { usualLow }) {
    const [comp, rla] = [figureOf(amps, 'comp', 'A')?.abs() ?? null, figureOf(plate, 'rla', 'A')];
    const left = (Object.keys(RULED) as (keyof typeof RULED)[]).filter(
      (key) => !chosenOf(ruled, 'ruled').includes(key),
    );
    const of = (outcome: 'shown' | 'not-shown' | 'undecided', reading: string, texts: readonly string[]) => ({
      outcome,
      findings: texts.map((text) =>
        finding({
          name: 'Compressor amps',
          reading,
          limits: `under ${say(usualLow.value, '%')} of RLA is low`,
          word: outcome === 'undecided' ? 'not judged' : outcome,
          text,
          source: usualLow.source,
        }),
      ),
    });
    if (comp === null || !rla?.gt(0))
      return of('undecided', comp ? say(comp, 'A') : 'no reading', ['It takes the compressor’s amps and its RLA.']);
    const share = shareOf(comp, rla).times(100);
    const reading = `${say(comp, 'A')}, ${say(share, '%', 0)} of RLA`;
    if (!share.lt(usualLow.value))
      return of('not-shown', reading, ['The amps are not low. A compressor that draws its current does its work.']);
    if (left.length > 0)
      return of(
        'undecided',
        reading,
        left.map((key) => RULED[key]),
      );
    return of('shown', reading, ['The amps are low, and what looks the same is ruled out.']);
  },
  probe({ usualLow }) {
    const all = Object.keys(RULED);
    const ruled = { ruled: chose(...all) };
    const plate = reads({ rla: 100 }, 'A');
    const low = { amps: reads({ comp: past(usualLow.value, '-0.001') }, 'A'), plate, ruled };
    return [
      low,
      { ...low, amps: reads({ comp: usualLow.value }, 'A') },
      ...all.map((key) => ({ ...low, ruled: { ruled: chose(...all.filter((one) => one !== key)) } })),
      { ...low, ruled: { ruled: untaken } },
      { ...low, plate: { rla: untaken } },
      { ...low, plate: reads({ rla: 0 }, 'A') },
      { ...low, amps: { comp: untaken } },
      { amps: low.amps, plate },
      {},
    ];
  },
});

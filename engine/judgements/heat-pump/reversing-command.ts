import { judgement } from '../judgement.ts';
import { chose, past, untaken, volts } from '../probing.ts';
import { chosenOf, confirmed, figureOf } from '../read.ts';
import { finding, say } from '../say.ts';

const SOURCE = 'O or B as the maker wires it';

/**
 * Whether the reversing valve gets the command that cooling asks for: `wiring` (part `choice`: `o` energised in cooling,
 * `b` in heating), volts at its solenoid during a call for cooling (`readings`, part `solenoid`), and whether the delay
 * after a change of call has passed (`waited`).
 */
export const reversingCommand = judgement({
  id: 'reversing-command',
  semantics: 1,
  takes: ['wiring', 'readings', 'waited'],
  limits: ['pullIn', 'absent'],
  outcomes: ['right', 'wrong', 'low', 'wait', 'undecided'],
  run({ wiring, readings, waited }, { pullIn, absent }) {
    const [kind] = chosenOf(wiring, 'choice');
    const read = figureOf(readings, 'solenoid', 'V')?.abs() ?? null;
    const of = (outcome: 'right' | 'wrong' | 'low' | 'wait' | 'undecided', text: string) => ({
      outcome,
      findings: [
        finding({
          name: 'Command at the solenoid',
          reading: read ? say(read, 'V') : 'no reading',
          limits:
            kind === 'b'
              ? `under ${say(absent.value, 'V')} in cooling`
              : `${say(pullIn.value, 'V')} or more in cooling`,
          word: outcome === 'undecided' ? 'not judged' : outcome,
          text,
          source: `${SOURCE}; ${pullIn.source}`,
        }),
      ],
    });
    if (kind !== 'o' && kind !== 'b')
      return of('undecided', 'Whether it is energised in cooling or in heating is not known.');
    if (read === null) return of('undecided', 'The volts at the solenoid were not read.');
    if (read.gte(absent.value) && read.lt(pullIn.value))
      return of('low', `${say(read, 'V')} at the solenoid neither holds it in nor lets it go.`);
    const energised = read.gte(pullIn.value);
    if (kind === 'o' && !energised && !confirmed(waited))
      return of('wait', 'No volts decide nothing while the delay after a change of call may still run.');
    return energised === (kind === 'o')
      ? of('right', 'It gets the command that cooling asks for.')
      : of(
          'wrong',
          energised ? 'It is energised, and cooling asks for none.' : 'It is not energised, and cooling asks for it.',
        );
  },
  probe: ({ pullIn, absent }) => {
    const waited = { ok: chose('yes') };
    const edges = [pullIn.value, past(pullIn.value, '-0.01'), absent.value, past(absent.value, '-0.01'), '0'];
    return [
      ...['o', 'b'].flatMap((kind) =>
        edges.flatMap((value) => [
          { wiring: { choice: chose(kind) }, readings: volts({ solenoid: value }), waited },
          { wiring: { choice: chose(kind) }, readings: volts({ solenoid: value }) },
        ]),
      ),
      { wiring: { choice: chose('unsure') }, readings: volts({ solenoid: 25 }), waited },
      { wiring: { choice: chose('o') }, readings: { solenoid: untaken }, waited },
      {},
    ];
  },
});

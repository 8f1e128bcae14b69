import type { Parts } from '../../schema.ts';
import { judgement } from '../judgement.ts';
import { past, untaken, volts } from '../probing.ts';
import { figureOf } from '../read.ts';
import { finding, say } from '../say.ts';

/**
 * Where a call is lost between thermostat and outdoor unit, read at the indoor board with the call there and no volts
 * outdoors: `yc` Y to C at the board, `float` across the float switch, V. Volts at the board: the cable loses them. None,
 * and volts across the float: it is open. None at both: the thermostat or its cable. A float that nobody read is asked
 * for, and `across` is what was read of it then.
 */
export const callPath = judgement({
  id: 'call-path',
  semantics: 2,
  takes: ['readings', 'across'],
  limits: ['open', 'none'],
  outcomes: ['cable', 'float', 'ask-float', 'thermostat', 'undecided'],
  run({ readings, across }, { open, none }) {
    const at = (of: Parts | undefined, key: string) => figureOf(of, key, 'V')?.abs() ?? null;
    const [yc, float] = [at(readings, 'yc'), at(across, 'float') ?? at(readings, 'float')];
    const shown = yc ? say(yc, 'V') : 'no reading';
    const limits = `there from ${say(open.value, 'V')}, none under ${say(none.value, 'V')}`;
    const outcome = ((): 'cable' | 'float' | 'ask-float' | 'thermostat' | 'undecided' => {
      if (yc === null) return 'undecided';
      if (yc.gte(open.value)) return 'cable';
      if (!yc.lt(none.value)) return 'undecided';
      if (float === null) return 'ask-float';
      if (float.gte(open.value)) return 'float';
      return float.lt(none.value) ? 'thermostat' : 'undecided';
    })();
    const text = {
      cable: `${shown} at the board: the call leaves it.`,
      float: `${shown} at the board, ${float ? say(float, 'V') : ''} across the float switch: it is open.`,
      'ask-float': `${shown} at the board. Nobody read across a float switch, which may hold the call back.`,
      thermostat: `${shown} at the board, and no switch before it is open: the thermostat or its cable.`,
      undecided: 'Y to C at the board doesn’t settle where the call is lost.',
    }[outcome];
    return {
      outcome,
      findings: [
        finding({
          ...{ name: 'Y–C at the board', reading: shown, limits, word: outcome === 'ask-float' ? 'none' : outcome },
          ...{ text, source: open.source },
        }),
      ],
    };
  },
  probe({ open, none }) {
    const [nothing, some] = [past(none.value, '-0.01'), past(open.value, '-0.01')];
    return [
      { readings: volts({ yc: open.value }) },
      { readings: volts({ yc: some }) },
      { readings: volts({ yc: none.value }) },
      { readings: volts({ yc: nothing }) },
      { readings: volts({ yc: nothing, float: open.value }) },
      { readings: volts({ yc: nothing, float: some }) },
      { readings: volts({ yc: nothing, float: nothing }) },
      { readings: volts({ yc: nothing }), across: volts({ float: open.value }) },
      { readings: volts({ yc: nothing }), across: volts({ float: nothing }) },
      { readings: { yc: untaken } },
      {},
    ];
  },
});

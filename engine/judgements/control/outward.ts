import { judgement } from '../judgement.ts';
import { over, past, read, untaken } from '../probing.ts';
import { readingOf } from '../read.ts';
import { say } from '../say.ts';
import { ohmsFinding, sayOhms } from './ohm-band.ts';

/**
 * The 24 V side in Ω, dead: `secondary` of the transformer with one wire off, `primary` likewise where it was
 * read, and `outward` from Y to C with the field
 * wires lifted. An open winding is the transformer; under the limit outward is a short; two coils in parallel read half.
 */
export const outward = judgement({
  id: 'outward',
  semantics: 2,
  takes: ['readings'],
  limits: ['shorted'],
  outcomes: ['short', 'coil', 'open', 'secondary-open', 'primary-open', 'undecided'],
  run({ readings }, { shorted }) {
    const [secondary, out] = [readingOf(readings, 'secondary', 'Ω'), readingOf(readings, 'outward', 'Ω')];
    const low = out.kind === 'figure' && out.value.abs().lt(shorted.value);
    const is = out.kind === 'over' ? 'open' : out.kind === 'none' ? null : low ? 'short' : 'coil';
    const text = {
      short: `Y to C outward reads ${sayOhms(out)}: a short.`,
      coil: `Y to C outward reads ${sayOhms(out)}: a coil, no short.`,
      open: 'Y to C outward reads OL: nothing is connected, or it is open.',
      none: 'Y to C outward was not read.',
    }[is ?? 'none'];
    const winding = secondary.kind === 'over' ? 'open' : secondary.kind === 'none' ? 'missing' : 'reads';
    const findings = [
      ohmsFinding('Y–C outward', out, is ?? 'missing', text, shorted, `short under ${say(shorted.value, 'Ω')}`),
      ohmsFinding(
        ...(['Secondary', secondary, winding] as const),
        {
          open: 'The secondary reads OL: it is open.',
          missing: 'The secondary was not read.',
          reads: `The secondary reads ${sayOhms(secondary)}: it is whole.`,
        }[winding],
        ...([shorted, 'a reading, not OL'] as const),
      ),
    ];
    const primary = readingOf(readings, 'primary', 'Ω');
    if (primary.kind !== 'none')
      findings.push(
        ohmsFinding(
          ...(['Primary', primary, primary.kind === 'over' ? 'open' : 'reads'] as const),
          primary.kind === 'over'
            ? 'The primary reads OL: it is open.'
            : `The primary reads ${sayOhms(primary)}: it is whole.`,
          ...([shorted, 'a reading, not OL'] as const),
        ),
      );
    if (winding === 'open' && is !== 'short') return { outcome: 'secondary-open', findings };
    if (primary.kind === 'over' && is !== 'short') return { outcome: 'primary-open', findings };
    return { outcome: is ?? 'undecided', findings };
  },
  probe: ({ shorted }) => [
    { readings: { secondary: read(1, 'Ω'), outward: read(12, 'Ω') } },
    { readings: { secondary: read(1, 'Ω'), outward: read(shorted.value, 'Ω') } },
    { readings: { secondary: read(1, 'Ω'), outward: read(past(shorted.value, '-0.001'), 'Ω') } },
    { readings: { fuse1: over, secondary: read(1, 'Ω'), outward: read(past(shorted.value, '-0.001'), 'Ω') } },
    { readings: { secondary: read(1, 'Ω'), outward: over } },
    { readings: { secondary: over, outward: read(12, 'Ω') } },
    { readings: { secondary: read(1, 'Ω'), primary: over, outward: read(12, 'Ω') } },
    { readings: { secondary: read(1, 'Ω'), primary: over, outward: read(1, 'Ω') } },
    { readings: { secondary: read(1, 'Ω'), primary: read(22, 'Ω'), outward: over } },
    { readings: { secondary: untaken, outward: untaken } },
    {},
  ],
});

import type { Equipment, Finding } from '../../schema.ts';
import { judgement, type Limit } from '../judgement.ts';
import { digits, finding, say } from '../say.ts';
import { type Cause, likelyCauses } from './cause-points.ts';
import { SEEN, sightings, told } from './seen.ts';

const LIMITS = ['hermLow', 'hermHigh', 'fanSection', 'volts', 'coil', 'contacts', 'fuseLow', 'fuseHigh'] as const;
type LoadLimits = Readonly<Record<(typeof LIMITS)[number], Limit>>;
type Unit = Equipment | null;

/**
 * What goes on the truck for the likely causes: by the unit's own marking where the shop has it, else by the common range.
 * `marking`: at least one line is from the record.
 */
export const load = judgement({
  id: 'load',
  semantics: 1,
  takes: [...SEEN],
  limits: LIMITS,
  outcomes: ['marking', 'common', 'nothing', 'undecided'],
  run(given, limits, { equipment }) {
    const likely = likelyCauses(sightings(given));
    if (likely.length === 0) {
      const text = 'No cause is likely yet: load the usual.';
      return { outcome: 'undecided', findings: [finding({ name: 'Load', reading: 'open', word: 'open', text })] };
    }
    const lines = likely.flatMap(({ cause }) => LINES[cause]?.(equipment, limits) ?? []);
    if (lines.length === 0) {
      const text = 'None of the likely causes needs a part.';
      return { outcome: 'nothing', findings: [finding({ name: 'Load', reading: 'no part', word: 'nothing', text })] };
    }
    return { outcome: lines.some(({ word }) => word === MARKED) ? 'marking' : 'common', findings: lines };
  },
  probe: () => [
    told({ outdoor: 'hum-still' }),
    told({ outdoor: 'chatters', display: 'blank' }),
    told({ blower: 'weak' }),
    told({ recent: 'ours' }),
    {},
  ],
});

const MARKED = 'from the record';
const line = (name: string, reading: string, marked: boolean, source: string | null = null): Finding => {
  const word = marked ? MARKED : 'common range';
  return finding({ name, reading, word, text: `${name}: ${reading}, ${word}.`, source });
};

const LINES: Partial<Record<Cause, (unit: Unit, limits: LoadLimits) => Finding[]>> = {
  capacitor: (unit, limits) => [capacitor(unit, limits)],
  fan: (unit) => [motor(unit)],
  contactor: (_, { coil, contacts }) => [
    line(
      'Contactor',
      `coil ${say(coil.value, coil.unit)}, contacts ${say(contacts.value, contacts.unit)}`,
      false,
      coil.source,
    ),
  ],
  control: (_, { fuseLow, fuseHigh }) => [
    line(
      'Low-voltage fuses and a transformer',
      `${digits(fuseLow.value, 0)} and ${say(fuseHigh.value, fuseHigh.unit)}`,
      false,
      fuseLow.source,
    ),
  ],
  blower: () => [line('Blower motor and its run capacitor', 'PSC, the usual sizes', false)],
  air: () => [line('Filters', 'the usual sizes', false)],
  drain: () => [line('Drain gear', 'float switch and wet vacuum', false)],
  coil: () => [line('Coil cleaning', 'hose, fin comb and cleaner', false)],
  charge: () => [line('Refrigerant gear', 'gauges, scale, recovery and leak detector', false)],
  short: () => [line('Insulation tester', 'with fuses of the plate’s size', false)],
};

function capacitor(unit: Unit, { hermLow, hermHigh, fanSection, volts }: LoadLimits): Finding {
  const printed = Object.values(unit?.facts ?? {}).find((fact) => fact.kind === 'label');
  if (printed?.kind === 'label') {
    const { herm, fan, volts: at } = printed.label;
    const values = fan === null ? digits(herm, 4) : `${digits(herm, 4)}+${digits(fan, 4)}`;
    return line('Run capacitor', `${values}\u2009µF${at === null ? '' : `, ${say(at, 'VAC')}`}`, true);
  }
  const fitted = unit?.history.findLast(({ what, herm }) => what === 'fitted' && herm !== null);
  if (fitted?.herm != null) {
    const read = [fitted.herm, fitted.fan].flatMap((value) => (value === null ? [] : digits(value, 4))).join(' and ');
    return line('Run capacitor', `the last one fitted read ${read}\u2009µF`, true);
  }
  const range = `${digits(hermLow.value, 0)} to ${digits(hermHigh.value, 0)}`;
  const reading = `${range}\u2009µF with ${say(fanSection.value, 'µF')}, ${say(volts.value, 'VAC')}`;
  return line('Run capacitor', reading, false, hermLow.source);
}

function motor(unit: Unit): Finding {
  const amps = unit?.facts.fla;
  const marked = amps?.kind === 'figure';
  return line('Outdoor fan motor', marked ? `for ${say(amps.value, amps.unit)}` : 'the usual sizes', marked);
}

import {
  amps,
  choose,
  confirm,
  degrees,
  degreesApart,
  flow,
  form,
  judge,
  measure,
  one,
  psig,
  several,
} from '../../engine/vocabulary.ts';
import { CIRCUIT } from '../examples/cooling/circuit.ts';
import { LIMITS } from '../limits.ts';
import { CIRCUIT_VERDICTS } from './circuit-verdicts.ts';

const METERING = {
  txv: { label: 'Expansion valve', words: ['txv', 'valve', 'tev', 'eev', 'expansion valve'] },
  fixed: { label: 'Fixed orifice', words: ['fixed', 'piston', 'orifice', 'cap tube', 'capillary', 'fixed orifice'] },
  unsure: { label: 'Not sure', words: ['dont know', 'unsure', 'not sure which'] },
};

/** The circuit by a certified person: pressures and line temperatures together, and what they come to. */
export const circuit = flow({
  id: 'circuit',
  version: 1,
  title: 'Refrigerant circuit',
  exits: ['restart', 'raised', 'left'],
  examples: CIRCUIT,
  steps: {
    person: choose({
      say: 'Pressures come next. Is a person certified for refrigerant here?',
      body: ['Certified for high-pressure refrigerants, in person. From afar doesn’t count.'],
      callouts: [{ level: 'warning', text: 'Hoses and gauges are put on and taken off by a certified person only.' }],
      why: 'Attaching gauges can release refrigerant. The certificate is the law, not our rule.',
      source: ['40 CFR 82.161: technicians who attach gauges or open a circuit are certified'],
      options: {
        yes: {
          label: 'Yes, certified, at the unit',
          words: ['certified', 'i am certified', 'im certified'],
          to: 'which',
        },
        no: { label: 'No', words: ['not certified', 'nobody', 'no one'], to: 'wanted' },
        unsure: { label: 'Not sure', words: ['dont know', 'unsure', 'not sure'], to: 'wanted' },
      },
    }),
    which: form({
      say: 'Which refrigerant, what meters it, and what subcooling does the label ask for?',
      body: ['From the nameplate and the charging label. No label: leave the subcooling out.'],
      why: 'A pressure means nothing without its refrigerant. The label’s target comes before any habit.',
      parts: {
        refrigerant: one('Refrigerant', {
          'r-410a': { label: 'R-410A', words: ['410a', '410', 'r410a', 'r410'] },
          'r-22': { label: 'R-22', words: ['22', 'r22'] },
          'r-32': { label: 'R-32', words: ['32', 'r32'] },
          'r-454b': { label: 'R-454B', words: ['454b', '454', 'r454b'] },
          'r-134a': { label: 'R-134a', words: ['134a', '134', 'r134a'] },
          'r-404a': { label: 'R-404A', words: ['404a', '404', 'r404a'] },
          'r-290': { label: 'R-290', words: ['290', 'r290', 'propane'] },
          other: { label: 'Another, or unreadable', words: ['other', 'another', 'unknown', 'unreadable'] },
        }),
        metering: one('Metering', METERING),
        target: degreesApart('Subcooling on the label', {
          optional: true,
          words: ['sc', 'subcooling', 'target', 'label'],
        }),
      },
      cant: 'wanted',
      next: 'burns',
    }),
    burns: judge('may-burn', {
      of: { which: 'which' },
      limits: {},
      quiet: ['calm'],
      then: { burns: 'ignition', calm: 'ready', undecided: 'ignition' },
    }),
    ignition: confirm({
      say: 'It may burn. No flame, no spark, nothing switched nearby, air moving?',
      body: ['Tools and detector made for it. Leak suspected or a smell: get out, type it, switch nothing.'],
      callouts: [{ level: 'danger', text: 'A leak of it can catch fire. Every source of ignition is out first.' }],
      why: 'Class A2L and A3 burn. Unknown counts as burning.',
      source: ['ASHRAE 34: classes A2L and A3'],
      yes: 'No ignition source, air moving',
      words: ['no ignition', 'no flame', 'clear', 'ventilated'],
      no: { label: 'Not so here', words: ['not so', 'not clear'], to: 'wanted' },
      next: 'ready',
    }),
    ready: confirm({
      say: 'Before the gauges: all four so?',
      body: [
        'A certified person holds them.',
        'It has run for 15 minutes.',
        'No ice on coil or lines.',
        'Filter and both coils are clean, the blower at its speed.',
      ],
      callouts: [{ level: 'warning', text: 'No gauges and no verdict about the charge on ice.' }],
      why: 'On ice, on dirt, or in the first minutes a good charge looks wrong.',
      source: ['15 minutes, clean coils, no ice: common practice, no single source'],
      yes: 'All four are so',
      words: ['all four', 'all so', 'all good'],
      no: { label: 'Not all', words: ['not all', 'ice', 'dirty', 'not clean', 'not 15 minutes'], to: 'not-ready' },
      next: 'readings',
    }),
    readings: measure({
      say: 'Both pressures, both lines and the air, in one sitting.',
      body: [
        'Suction and liquid pressure at the service valves. Big line near the valve, small line near the valve, clamps insulated.',
        'Return air dry-bulb and wet-bulb at the coil, outdoor air in the shade.',
      ],
      why: 'Superheat and subcooling are read together. One pressure alone concludes nothing.',
      source: [
        'Saturation: CoolProp’s ancillary equations; targets: the label, else common practice',
        'Suction saturation 30 to 40 °F under the return, condensing 15 to 30 °F above the outdoor air: common practice, no single source',
      ],
      circuit: 'refrigerant',
      fields: {
        suction: psig('Suction pressure', { words: ['suct', 'low', 'low side', 'suction'] }),
        liquid: psig('Liquid pressure', { words: ['head', 'high', 'high side', 'discharge'] }),
        suctionLine: degrees('Big line', { words: ['big', 'big line', 'suction line', 'sl'] }),
        liquidLine: degrees('Small line', { words: ['small', 'small line', 'liquid line', 'll'] }),
        return: degrees('Return air', { words: ['ret', 'return air', 'indoor'] }),
        wb: degrees('Return wet-bulb', { optional: true, words: ['wet bulb', 'wet-bulb'] }),
        outdoor: degrees('Outdoor air', { words: ['outside', 'ambient', 'od'] }),
      },
      cant: 'wanted',
      next: 'judged',
    }),
    judged: judge('circuit', {
      of: { which: 'which', readings: 'readings', ready: 'ready' },
      limits: LIMITS.circuit,
      then: {
        normal: 'in-order',
        undercharge: 'undercharge',
        restriction: 'across',
        airflow: 'airflow',
        overcharge: 'overcharge',
        'condenser-air': 'condenser-air',
        'not-pumping': 'ruled',
        overfeeding: 'bulb',
        metering: 'bulb',
        undecided: 'undecided',
      },
    }),
    across: measure({
      say: 'Small line before and behind the drier, and behind anything else in it.',
      body: ['The same clamp, insulated, on clean pipe. The part with the largest fall counts.'],
      why: 'A part that restricts cools the line behind it. The pattern alone doesn’t say which.',
      source: ['More than 3 °F across: common practice, no single source'],
      circuit: 'refrigerant',
      fields: {
        before: degrees('Before', { words: ['in', 'inlet'] }),
        after: degrees('Behind', { words: ['out', 'outlet', 'behind'] }),
      },
      cant: 'not-located',
      next: 'drier',
    }),
    drier: judge('drier', {
      of: { drier: 'across' },
      limits: LIMITS.drier,
      then: { restricted: 'restriction', free: 'not-located', undecided: 'not-located' },
    }),
    ruled: measure({
      say: 'Compressor amps now, and what is ruled out?',
      body: [
        'Clamp the C lead at these pressures.',
        'Reversing valve: none, or no bypass by its lines. Unloader: none, or tested. Rotation: quiet and right.',
      ],
      callouts: [{ level: 'danger', text: 'Line voltage is present. Qualified, rated gloves, eye protection.' }],
      why: 'A valve that leaks through, an unloader or a compressor that turns backwards reads the same.',
      source: ['Amps below 60 % of RLA are low: common practice, no single source'],
      circuit: 'line',
      fields: {
        comp: amps('Compressor, C lead', { over: false, words: ['c', 'compressor'] }),
        ruled: several(
          'Ruled out',
          {
            valve: { label: 'Reversing valve', words: ['valve', 'rv', 'no reversing valve'] },
            unloader: { label: 'Unloader', words: ['no unloader'] },
            rotation: { label: 'Rotation', words: ['rotation right', 'right way'] },
          },
          { optional: true },
        ),
      },
      cant: 'pumping-open',
      next: 'pumping',
    }),
    pumping: judge('not-pumping', {
      of: { amps: 'ruled', plate: '@rla', ruled: 'ruled' },
      limits: LIMITS.notPumping,
      then: { shown: 'not-pumping', 'not-shown': 'pumping-open', undecided: 'pumping-open' },
    }),
    bulb: choose({
      say: 'Metering device: is its bulb tight, insulated, on clean pipe?',
      body: ['Fixed orifice: is the right one in, seated the right way?'],
      why: 'A loose bulb feeds too much, and a strap is cheaper than a valve.',
      source: ['Bulb before valve: common practice, no single source'],
      options: {
        good: {
          label: 'Bulb good, or orifice right',
          words: ['good', 'tight', 'bulb tight', 'strapped'],
          to: 'metering',
        },
        loose: {
          label: 'It was loose or bare',
          words: ['loose', 'bare', 'bulb loose', 'not insulated'],
          to: 'bulb-loose',
        },
        unsure: { label: 'Can’t get at it', words: ['cant see', 'unsure', 'not sure', 'cant reach'], to: 'undecided' },
      },
    }),
    ...CIRCUIT_VERDICTS,
  },
});

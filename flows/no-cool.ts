import { choose, flow, found, include, judge, manual, note, verdict } from '../engine/vocabulary.ts';
import { blower } from './blower.ts';
import { blowerOff } from './blower-off.ts';
import { chatter } from './control/chatter.ts';
import { coilLive } from './control/coil-live.ts';
import { control } from './control/control.ts';
import { cycling } from './control/cycling.ts';
import { indoorSource } from './control/indoor-source.ts';
import { printedCoil } from './control/printed-coil.ts';
import { runsOn } from './control/runs-on.ts';
import { silent } from './control/silent.ts';
import { alarm } from './cooling/alarm.ts';
import { code } from './cooling/code.ts';
import { ice } from './cooling/ice.ts';
import { noise } from './cooling/noise.ts';
import { notCold } from './cooling/not-cold.ts';
import { warm } from './cooling/warm.ts';
import { water } from './cooling/water.ts';
import { deadBlock } from './dead-block.ts';
import { ROOT, ROUND } from './examples/start.ts';
import { busDead } from './inverter/bus-dead.ts';
import { inverter } from './inverter/inverter.ts';
import { LIMITS } from './limits.ts';
import { dead } from './make-dead.ts';
import { contactorAfter } from './motors/contactor-after.ts';
import { ecmFan } from './motors/ecm-fan.ts';
import { fanRests } from './motors/fan-rests.ts';
import { motorAfter } from './motors/motor-after.ts';
import { ROUNDS } from './motors/starts.ts';
import { stillAfter } from './motors/still-after.ts';
import { compressorTerminals } from './motors/terminals.ts';
import { whoseHum } from './motors/whose-hum.ts';
import { refrigeration } from './refrigeration.ts';
import { repair } from './repair.ts';
import { restart } from './restart.ts';
import { breaker } from './supply/breaker.ts';
import { phaseMonitor } from './supply/phase-monitor.ts';
import { supply } from './supply/supply.ts';
import { ground } from './trips/ground.ts';
import { insulation } from './trips/insulation.ts';
import { trips } from './trips/trips.ts';
import { underLoad } from './under-load.ts';
import { KINDS } from './unit.ts';

const QUIET = ['a', 'b', 'c', 'd', 'e', 'f', 'g', 'h', 'i', 'j', 'k', 'l', 'm', 'n', 'o', 'p', 'undecided'] as const;
const CLASSES = {
  psc: {
    label: 'PSC with a run capacitor of two or three terminals',
    words: ['psc', 'dual', 'dual cap', 'dual run cap', 'dual capacitor', 'single', 'single cap', 'single run cap'],
    to: 'stays-on',
  },
  ecm: {
    label: 'Single-section capacitor, electronically commutated fan',
    words: ['ecm', 'ecm fan', 'ecm motor', 'electronic fan'],
    to: 'stays-on',
  },
  inverter: {
    label: 'Inverter, communicating or mini-split',
    words: ['mini-split', 'mini split', 'minisplit', 'ductless', 'communicating'],
    to: 'inverter',
  },
  'three-phase': {
    label: 'Three-phase',
    words: ['3-phase', '3 phase', 'three phase', '3ph', '3 ph', 'trifasico'],
    to: 'monitor',
  },
  refrigeration: {
    label: 'Condensing unit of a walk-in or reach-in',
    words: ['walk-in', 'reach-in', 'walk in', 'walk in cooler', 'walk in freezer', 'reach in cooler'],
    to: 'box',
  },
  'out-of-scope': {
    label: 'VRF, chiller, ammonia, CO₂, above 600 V, gas side',
    words: ['vrf', 'chiller'],
    to: 'out-of-scope',
  },
  unsure: { label: 'Not sure', words: ['dont know', 'don’t know', 'unsure', 'not sure'], to: 'inverter' },
} as const;

/** One round: observe, classify, test, verdict, fit, restart. A failed restart begins the next. */
const round = flow({
  id: 'round',
  version: 1,
  title: 'Observe and classify',
  exits: ['done', 'unrepaired', 'raised', 'left', 'again'],
  examples: ROUND,
  steps: {
    observation: choose({
      say: 'What does the unit do?',
      body: [
        'Stand back, thermostat calling, look and listen. Open nothing yet.',
        'If the call says a breaker trips, something burns, or it hums: energise nothing, answer from the call.',
      ],
      callouts: [
        {
          level: 'warning',
          text: 'Hum, still fan or chatter: off within seconds, at the thermostat first, then the pull-out. Never push the fan with power on.',
        },
        {
          level: 'notice',
          text: 'Qualified people only. Your employer’s program, the maker’s instructions and local codes govern. This does not replace a licensed person.',
        },
      ],
      why: 'The observation decides the order of tests.',
      as: 'round:observation',
      options: {
        a: {
          label: 'Outdoor unit silent',
          words: [
            'silent',
            'dead',
            'unit dead',
            'nothing runs outside',
            'outdoor unit dead',
            'not doing anything',
            'not running at all',
            'unit not running',
            'wont come on',
            'wont turn on',
            'no enciende',
            'no prende',
          ],
          to: 'class',
        },
        b: {
          label: 'Hum, nothing turns',
          words: [
            'hums nothing turns',
            'hum',
            'hums',
            'humming',
            'just hums',
            'buzz no spin',
            'nothing turns',
            'nothing turns just hums',
            'buzzing and nothing moves',
            'buzzes nothing moves',
            'hums nothing moves',
            'humming but not spinning',
            'hums but fan not spinning',
            'humming but fan not spinning',
            'hums but nothing turns',
            'zumba',
            'zumba y no arranca',
          ],
          to: 'class',
        },
        c: {
          label: 'Compressor runs, fan still',
          words: [
            'fan still',
            'fan not turning',
            'fan not spinning',
            'fan not running',
            'fan not spin',
            'fan not turn',
            'fan not start',
            'fan not come on',
            'fan stopped',
            'no fan',
            'condenser fan out',
            'condenser fan not running',
            'condensor fan not running',
            'condenser fan not spinning',
            'condensor fan not spinning',
            'condensor fan out',
            'outdoor fan not running',
            'outdoor fan not spinning',
            'fan dead',
            'fan motor dead',
            'fan motor seized',
            'fan seized',
            'compressor runs fan not',
            'comp runs fan not',
            'fan not turning but comp running',
            'fan not turning but compressor running',
            'ventilador no gira',
            'no gira el ventilador',
            'abanico no gira',
          ],
          to: 'class',
        },
        d: {
          label: 'Fan runs, compressor hums, clicks off or is silent',
          words: [
            'fan runs comp hums',
            'compressor hums',
            'comp hums',
            'comp humming',
            'compressor humming',
            'comp just hums',
            'compressor just hums',
            'comp humming wont start',
            'comp wont start',
            'comp not starting',
            'comp not running',
            'compressor not running',
            'compressor wont start',
            'compressor not starting',
            'compressor wont kick on',
            'comp wont kick on',
            'fan runs but the compressor wont kick on',
            'comp clicks off',
            'compressor clicks off',
            'comp dead',
            'compressor dead',
            'comp dead fan runs',
            'compressor dead fan runs',
            'fan runs comp dead',
            'fan runs no compressor',
            'no compressor',
            'compresor no arranca',
          ],
          to: 'class',
        },
        e: {
          label: 'Both run, air not cold',
          words: [
            'not cold',
            'not cooling',
            'running not cooling',
            'both run no cooling',
            'both running no cooling',
            'both running not cold',
            'blowing cool not cold',
            'no enfria',
          ],
          to: 'class',
        },
        f: {
          label: 'Starts and stops every few minutes',
          words: [
            'short cycling',
            'short cycles',
            'kicks on and off',
            'cycling',
            'on and off',
            'turns on and off',
            'starts and stops',
            'cycles on and off',
          ],
          to: 'class',
        },
        g: {
          label: 'Contactor buzzes or chatters',
          words: [
            'chatters',
            'buzzes',
            'chattering',
            'contactor chattering',
            'contactor buzzing',
            'chattering contactor',
            'buzzing contactor',
            'contactor chatter',
          ],
          to: 'class',
        },
        h: {
          label: 'Breaker trips or fuse opens',
          words: [
            'breaker trips',
            'fuse blows',
            'trips',
            'breaker tripped',
            'blown fuse',
            'fuse blown',
            'fuses blown',
            'blew a fuse',
            'blows fuses',
            'keeps tripping',
            'breaker keeps tripping',
            'trips breaker',
            'tripping breaker',
            'pops breaker',
            'popped breaker',
            'popped the breaker',
            'breaker popped',
            'breaker blew',
            'breaker wont stay on',
            'breaker wont hold',
            'breaker wont reset',
            'se bota el breaker',
          ],
          to: 'class',
        },
        i: {
          label: 'Outdoor runs, indoor blower doesn’t',
          words: [
            'no blower',
            'no air inside',
            'no air',
            'no airflow',
            'blower dead',
            'blower not running',
            'blower not turning',
            'indoor fan not running',
          ],
          to: 'air-off',
        },
        j: {
          label: 'Ice on coil or lines',
          words: [
            'ice',
            'iced',
            'icing',
            'freezing up',
            'frozen',
            'froze up',
            'frozen up',
            'iced up',
            'frozen coil',
            'ice on the lineset',
            'hielo',
          ],
          to: 'ice',
        },
        k: {
          label: 'Water at the indoor unit, float tripped',
          words: [
            'water',
            'float',
            'float tripped',
            'float switch',
            'float switch tripped',
            'leaking water',
            'water leak',
            'pan full',
            'drain clogged',
          ],
          to: 'water',
        },
        l: {
          label: 'Other noise or smell',
          words: [
            'noise',
            'noisy',
            'smell',
            'grinding',
            'grinding noise',
            'squealing',
            'screeching',
            'rattling',
            'loud',
            'loud noise',
          ],
          to: 'noise',
        },
        m: {
          label: 'Outdoor runs with the thermostat OFF',
          words: ['runs with stat off', 'wont shut off', 'wont turn off', 'runs all the time', 'never shuts off'],
          to: 'class',
        },
        n: {
          label: 'Warm air in cooling',
          words: ['warm air', 'hot air', 'blowing hot', 'blowing warm', 'blows warm', 'blows hot', 'aire caliente'],
          to: 'class',
        },
        o: {
          label: 'Error code or blinking board',
          words: [
            'error code',
            'error',
            'blinking',
            'blinking light',
            'blinking red light',
            'flashing',
            'flashing light',
            'fault code',
            'fault',
            'codigo de error',
          ],
          to: 'code',
        },
        p: {
          label: 'Blower never stops, compressor locked out, alarm',
          words: ['leak alarm', 'locked out', 'blower never stops'],
          to: 'alarm',
        },
      },
      // Nobody could tell: nothing is energised to find out. Every dead test, then the supply, before a start.
      cant: 'class',
    }),
    ice: include(ice, {
      exits: { thawed: 'class', blower: 'air-off', raised: '!raised', left: '!left' },
      needs: {},
    }),
    water: include(water, { exits: { restart: 'restart', raised: '!raised', left: '!left' }, needs: {} }),
    noise: include(noise, {
      exits: {
        restart: 'restart',
        tests: 'class',
        blower: 'air-off',
        contactor: 'class',
        raised: '!raised',
        left: '!left',
      },
      needs: {},
    }),
    code: include(code, { exits: { restart: 'restart', tests: 'class', raised: '!raised' }, needs: {} }),
    alarm: include(alarm, { exits: { restart: 'restart', raised: '!raised' }, needs: {} }),
    'air-off': include(blowerOff, { exits: { off: 'blower', stays: 'class' }, needs: {} }),
    class: choose({
      say: 'What kind of unit is it?',
      body: ['From the record, the nameplate and what is outside. Open nothing for this.'],
      callouts: [
        {
          level: 'danger',
          text: 'An inverter’s bus holds far more energy than a run capacitor. Not sure counts as inverter.',
        },
      ],
      why: 'Inverter equipment never reaches the capacitor procedure or the discharge tool.',
      as: 'class',
      options: CLASSES,
    }),
    box: include(refrigeration, {
      exits: { 'go-on': 'stays-on', settled: 'restart', raised: '!raised' },
      needs: {},
    }),
    monitor: include(phaseMonitor, {
      exits: { 'go-on': 'stays-on', left: '!left', raised: '!raised' },
      needs: {},
    }),
    // Whatever was seen first: an outdoor unit that doesn't go off comes before it.
    'stays-on': found({
      among: { outdoor: { verdicts: ['outdoor-stays-on'], to: 'runs-on' } },
      none: 'by-observation',
    }),
    'by-observation': judge('observed', {
      of: { seen: '@round:observation' },
      limits: {},
      quiet: QUIET,
      then: {
        a: 'silent',
        b: 'hum',
        c: 'rests',
        d: 'block',
        e: 'not-cold',
        f: 'cycling',
        g: 'chatter',
        h: 'trips',
        i: 'block',
        j: 'not-cold',
        k: 'block',
        l: 'heard',
        m: 'runs-on',
        n: 'warm',
        o: 'block',
        p: 'block',
        undecided: 'block',
      },
    }),
    hum: include(whoseHum, { exits: { motors: 'block', control: 'chatter' }, needs: {} }),
    rests: include(fanRests, {
      exits: { tests: 'fan-kind', 'not-cold': 'not-cold', done: '!unrepaired', raised: '!raised', left: '!left' },
      needs: {},
    }),
    'fan-kind': judge('unit-class', {
      of: { unit: '@class' },
      limits: {},
      quiet: KINDS,
      then: {
        psc: 'block',
        ecm: 'ecm-fan',
        'three-phase': 'block',
        refrigeration: 'block',
        closed: 'inverter',
        undecided: 'block',
      },
    }),
    'ecm-fan': include(ecmFan, { exits: { raised: '!raised' }, needs: {} }),
    heard: found({ among: { contactor: { verdicts: ['contactor-noise'], to: 'chatter' } }, none: 'block' }),
    cycling: include(cycling, {
      exits: { 'dead-tests': 'block', airflow: 'not-cold', left: '!left', done: '!unrepaired' },
      needs: {},
    }),
    warm: include(warm, {
      exits: { restart: 'restart', 'not-cold': 'not-cold', again: '!again', raised: '!raised', left: '!left' },
      needs: {},
    }),
    'not-cold': include(notCold, {
      exits: { restart: 'restart', block: 'block', raised: '!raised', left: '!left' },
      needs: {},
    }),
    silent: include(silent, {
      exits: {
        control: 'control',
        indoor: 'source',
        'dead-tests': 'block',
        blower: 'silent-air-off',
        water: 'float-water',
        trips: 'trips',
        settled: 'restart',
        raised: '!raised',
        done: '!unrepaired',
      },
      needs: {},
    }),
    control: include(control, {
      exits: {
        replace: 'repair',
        'dead-tests': 'block',
        settled: 'restart',
        indoor: 'source',
        chatter: 'chatter',
        left: '!left',
        raised: '!raised',
      },
      needs: {},
      again: { times: 2, spent: 'block' },
    }),
    chatter: include(chatter, {
      exits: { replace: 'repair', 'dead-tests': 'block', indoor: 'source', left: '!left', raised: '!raised' },
      needs: {},
    }),
    'silent-air-off': include(blowerOff, { exits: { off: 'blower', stays: 'runs-on' }, needs: {} }),
    'runs-on': include(runsOn, {
      exits: { replace: 'repair', raised: '!raised', left: '!left' },
      needs: {},
    }),
    trips: include(trips, { exits: { 'dead-tests': 'block', raised: '!raised' }, needs: {} }),
    block: include(deadBlock, {
      exits: {
        repair: 'repair',
        clean: 'clean',
        'under-load': 'under-load',
        ground: 'ground',
        cause: 'insulation',
        terminals: 'terminals',
        raised: '!raised',
      },
      needs: {},
    }),
    ground: include(ground, {
      exits: { replace: 'repair', settled: 'restart', compressor: 'insulation', raised: '!raised' },
      needs: {},
    }),
    clean: judge('observed', {
      of: { seen: '@round:observation' },
      limits: {},
      quiet: QUIET,
      then: {
        a: 'explained',
        b: 'supply',
        c: 'lines',
        d: 'lines',
        e: 'restart',
        f: 'printed',
        g: 'own-coil',
        h: 'insulation',
        i: 'restart',
        j: 'restart',
        k: 'restart',
        l: 'restart',
        m: 'restart',
        n: 'restart',
        o: 'restart',
        p: 'restart',
        undecided: 'supply',
      },
    }),
    // A head that was high has opened the circuit: what stood in the air is gone, and the restart's line reads the supply.
    explained: found({ among: { head: { verdicts: ['high-pressure-open'], to: 'restart' } }, none: 'supply' }),
    lines: judge('unit-class', {
      of: { unit: '@class' },
      limits: {},
      quiet: KINDS,
      then: {
        psc: 'restart',
        ecm: 'restart',
        'three-phase': 'supply',
        refrigeration: 'restart',
        closed: 'restart',
        undecided: 'restart',
      },
    }),
    insulation: include(insulation, {
      exits: { good: 'fused', left: '!left', raised: '!raised' },
      needs: {},
      again: { times: 2, spent: 'insulation-open' },
    }),
    'insulation-open': verdict({
      verdict: 'insulation-not-settled',
      title: 'The insulation reads low, and not in one state twice',
      says: ['Nothing is condemned, and nothing is energised.'],
      next: ['A senior repeats it: leads off, heater off, not cold.', 'It stays off.'],
      who: 'senior',
      judged: [],
      evidence: ['observation'],
      raises: 'verdict',
      then: '!raised',
    }),
    // What read low to ground at its own leads stays off, whatever the insulation test reads after it.
    fused: found({
      among: {
        low: { verdicts: ['compressor-low-to-ground'], to: 'contradicts' },
        fuse: { verdicts: ['fuse-blown'], to: 'fuse-alone' },
      },
      none: 'breaker',
    }),
    contradicts: verdict({
      verdict: 'insulation-contradicts-ohms',
      title: 'Low in ohms, and the insulation test holds: undecided, no power',
      says: ['The compressor read low to ground at its own leads. One good test after it does not clear it.'],
      next: ['A senior reads both again: leads, plug and terminals clean and dry.', 'Nothing is energised until then.'],
      who: 'senior',
      judged: [],
      evidence: ['observation'],
      raises: 'verdict',
      then: '!raised',
    }),
    'fuse-alone': verdict({
      verdict: 'fuse-without-cause',
      title: 'A blown fuse without a cause found: one new fuse, once, with a senior’s word',
      says: ['No ground at meter voltage, and the insulation holds. A hot clip or age opens a fuse too.'],
      next: [
        'A senior decides about one fuse of the printed size, at most the MOP, and one controlled start.',
        'It stays off until then.',
      ],
      who: 'senior',
      judged: [],
      evidence: ['observation'],
      raises: 'verdict',
      then: '!raised',
    }),
    breaker: include(breaker, { exits: { holds: 'restart', raised: '!raised', left: '!left' }, needs: {} }),
    'under-load': include(underLoad, {
      exits: { replace: 'repair', good: 'restart', raised: '!raised' },
      needs: {},
    }),
    printed: include(printedCoil, { exits: { apart: 'who-drops', 'not-apart': 'restart' }, needs: {} }),
    'who-drops': include(control, {
      exits: {
        replace: 'repair',
        'dead-tests': 'restart',
        settled: 'restart',
        indoor: 'source',
        chatter: 'chatters',
        left: '!left',
        raised: '!raised',
      },
      needs: {},
      again: { times: 2, spent: 'restart' },
    }),
    chatters: verdict({
      verdict: 'chatters-while-cycling',
      title: 'It chatters where it cycles: the volts at its coil come first',
      says: ['Chatter welds contacts and breaks compressors.'],
      next: ['The lowest volts at pull-in, and R to C beside it, decide it. A senior leads on.', 'It stays off.'],
      who: 'senior',
      judged: [],
      evidence: ['observation'],
      raises: 'verdict',
      then: '!raised',
    }),
    // A dead 24 V side is sought at its source, so before that.
    blower: include(blower, {
      cabinet: 'indoor',
      exits: { done: '!done', again: '!again', source: 'source', settled: 'restart', raised: '!raised', left: '!left' },
      needs: {},
    }),
    source: include(indoorSource, {
      cabinet: 'indoor',
      exits: { settled: 'restart', water: 'float-water', raised: '!raised', left: '!left' },
      needs: {},
    }),
    'float-water': include(water, { exits: { restart: 'restart', raised: '!raised', left: '!left' }, needs: {} }),
    supply: include(supply, { exits: { good: 'own-coil', raised: '!raised', left: '!left' }, needs: {} }),
    // What could not be tested apart from the line is read live, before anything is started on hope.
    'own-coil': found({ among: { own: { verdicts: ['control-not-apart'], to: 'coil-live' } }, none: 'restart' }),
    'coil-live': include(coilLive, {
      exits: { in: 'restart', replace: 'repair', 'dead-tests': 'restart', settled: 'restart', raised: '!raised' },
      needs: {},
      again: { times: 2, spent: 'restart' },
    }),
    terminals: include(compressorTerminals, {
      exits: { settled: 'restart', left: '!left', raised: '!raised' },
      needs: {},
    }),
    repair: include(repair, { exits: { fitted: 'restart', left: '!left' }, needs: {} }),
    restart: include(restart, {
      exits: {
        done: '!done',
        again: '!again',
        late: 'restarted',
        still: 'still',
        contactor: 'opened',
        raised: '!raised',
        left: '!left',
      },
      needs: {},
    }),
    still: include(stillAfter, {
      exits: { again: '!again', replace: 'motor', left: '!left', raised: '!raised' },
      needs: {},
    }),
    motor: include(motorAfter, { exits: { fitted: 'restarted', left: '!left' }, needs: {} }),
    // Hands go into a unit of a known kind alone; of another the next round asks.
    opened: judge('unit-class', {
      of: { unit: '@class' },
      limits: {},
      quiet: KINDS,
      then: {
        psc: 'contactor',
        ecm: 'contactor',
        'three-phase': 'contactor',
        refrigeration: 'contactor',
        closed: '!again',
        undecided: '!again',
      },
    }),
    contactor: include(contactorAfter, { exits: { fitted: 'restarted', left: '!left' }, needs: {} }),
    restarted: include(restart, {
      exits: {
        done: '!done',
        again: '!again',
        late: '!again',
        still: '!again',
        contactor: '!again',
        raised: '!raised',
        left: '!left',
      },
      needs: {},
    }),
    inverter: include(inverter, { cabinet: 'inverter', exits: { raised: '!raised' }, needs: {} }),
    'out-of-scope': note({
      say: 'This equipment is out of scope here. Note what whoever takes it needs.',
      body: [
        'What you see and hear, since when, codes. Nameplate: kind, volts, refrigerant.',
        'VRF, chiller: a technician trained by its maker. Ammonia, CO₂: a refrigeration contractor. Above 600 V: an electrician for it. Gas side: a gas technician.',
      ],
      callouts: [{ level: 'warning', text: 'Leave it off and closed. Gas smell, ammonia: get away and type it.' }],
      next: 'not-ours',
      cant: 'not-ours',
    }),
    'not-ours': verdict({
      verdict: 'out-of-scope',
      title: 'Out of scope: over to a senior, who calls whom it belongs to',
      says: ['Nothing is guessed beyond what this leads.'],
      next: ['A senior calls whoever is trained for it.', 'Tell the customer who comes.'],
      who: 'senior',
      judged: [],
      evidence: ['observation', 'class', 'out-of-scope'],
      raises: 'not-covered',
      then: '!raised',
    }),
  },
});

const root = flow({
  id: 'no-cool-root',
  version: 1,
  title: 'No-cool call',
  exits: ['done', 'unrepaired', 'raised', 'left'],
  examples: ROOT,
  steps: {
    round: include(round, {
      exits: { done: '!done', unrepaired: '!unrepaired', raised: '!raised', left: '!left' },
      needs: {},
      again: { times: ROUNDS, spent: 'spent' },
      round: true,
    }),
    spent: verdict({
      verdict: 'rounds-spent',
      title: 'Three rounds without a proven repair',
      says: ['No fourth round on one visit without a senior.'],
      next: ['Leave it off. A senior reads the three rounds.'],
      who: 'senior',
      judged: [],
      evidence: [],
      raises: 'verdict',
      then: '!raised',
    }),
  },
});

export const noCool = manual({
  id: 'no-cool',
  version: 1,
  title: 'No-cool call',
  root,
  isolation: dead,
  isolations: { inverter: busDead },
  cabinets: { outdoor: 'Outdoor unit', indoor: 'Indoor unit', inverter: 'Inverter unit' },
  fromRecord: ['rla', 'lra', 'fla'],
  labelTolerance: LIMITS.label.tolerance,
  endings: {
    done: {
      title: 'Proven',
      says: 'The restart figures are in and within what was checked. A senior reads and signs the record.',
    },
    unrepaired: {
      title: 'Nothing repaired',
      says: 'No part is at fault, none was changed, and no repair is proven. A senior reads and signs the record.',
    },
    raised: { title: 'With a senior', says: 'A senior has the record. Leave the unit off and closed until you hear.' },
    left: { title: 'Left off', says: 'The unit stays off. Say how it is left, so that the next person knows.' },
  },
});

import { flow, found, include, judge, note, verdict } from '../../engine/vocabulary.ts';
import { blower } from '../blower/blower.ts';
import { blowerOff } from '../blower/off.ts';
import { underLoad } from '../capacitor/under-load.ts';
import { chatter } from '../control/chatter.ts';
import { coilLive } from '../control/coil-live.ts';
import { control } from '../control/control.ts';
import { cycling } from '../control/cycling.ts';
import { printedCoil } from '../control/printed-coil.ts';
import { runsOn } from '../control/runs-on.ts';
import { silent } from '../control/silent.ts';
import { alarm } from '../cooling/alarm.ts';
import { code } from '../cooling/code.ts';
import { ice } from '../cooling/ice.ts';
import { noise } from '../cooling/noise.ts';
import { notCold } from '../cooling/not-cold.ts';
import { warm } from '../cooling/warm.ts';
import { water } from '../cooling/water.ts';
import { deadBlock } from '../dead/block.ts';
import { ROUND } from '../examples/start.ts';
import { indoorSource } from '../indoor/source.ts';
import { inverter } from '../inverter/inverter.ts';
import { contactorAfter } from '../motors/contactor-after.ts';
import { ecmFan } from '../motors/ecm-fan.ts';
import { fanRests } from '../motors/fan-rests.ts';
import { motorAfter } from '../motors/motor-after.ts';
import { stillAfter } from '../motors/still-after.ts';
import { whoseHum } from '../motors/whose-hum.ts';
import { refrigeration } from '../refrigeration/refrigeration.ts';
import { repair } from '../repair/repair.ts';
import { OPENED_HOT, restart } from '../restart/restart.ts';
import { breaker } from '../supply/breaker.ts';
import { phaseMonitor } from '../supply/phase-monitor.ts';
import { supply } from '../supply/supply.ts';
import { ground } from '../trips/ground.ts';
import { insulation } from '../trips/insulation.ts';
import { trips } from '../trips/trips.ts';
import { byKind } from '../unit.ts';
import { compressorTerminals } from '../windings/terminals.ts';
import * as afterATrip from './after-a-trip.ts';
import { head, notTheFan } from './head-high.ts';
import { chatters, contradicts, fuseAlone, insulationOpen } from './left-open.ts';
import { observation } from './observation.ts';
import { houseOrBox, kindForSource, unitKind } from './unit-kind.ts';

const QUIET = ['a', 'b', 'c', 'd', 'e', 'f', 'g', 'h', 'i', 'j', 'k', 'l', 'm', 'n', 'o', 'p', 'undecided'] as const;

/** One round: observe, classify, test, verdict, fit, restart. A failed restart begins the next. */
export const round = flow({
  id: 'round',
  version: 1,
  title: 'Observe and classify',
  exits: ['done', 'unrepaired', 'raised', 'left', 'again'],
  examples: ROUND,
  steps: {
    observation,
    'iced-where': houseOrBox('ice', 'class'),
    'water-where': houseOrBox('water', 'class'),
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
    class: unitKind,
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
      among: { outdoor: { verdicts: ['outdoor-stays-on', 'ice-and-wont-stop'], to: 'runs-on' } },
      none: 'of-a-house',
    }),
    // What a house is asked, its thermostat, its registers and its return, a box hasn't.
    'of-a-house': byKind('by-observation', { refrigeration: 'of-a-box' }),
    'of-a-box': judge('observed', {
      of: { seen: '@round:observation' },
      limits: {},
      quiet: QUIET,
      then: {
        a: 'box-coil',
        b: 'hum',
        c: 'block',
        d: 'block',
        e: 'block',
        f: 'block',
        g: 'chatter',
        h: 'trips',
        i: 'block',
        j: 'block',
        k: 'block',
        l: 'heard',
        m: 'runs-on',
        n: 'block',
        o: 'block',
        p: 'block',
        undecided: 'block',
      },
    }),
    'box-coil': include(printedCoil, { exits: { apart: 'control', 'not-apart': 'block' }, needs: {} }),
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
    'fan-kind': byKind('block', { ecm: 'ecm-fan', closed: 'inverter' }),
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
        repair: 'cause-first',
        clean: 'clean-trip',
        'under-load': 'cause-first',
        ground: 'ground',
        cause: 'insulation',
        terminals: 'terminals',
        raised: '!raised',
      },
      needs: {},
    }),
    ground: include(ground, {
      exits: { replace: 'cause-first', settled: 'cause-first', compressor: 'insulation', raised: '!raised' },
      needs: {},
    }),
    ...afterATrip.clean,
    'not-the-fan': notTheFan('clean'),
    clean: judge('observed', {
      of: { seen: '@round:observation' },
      limits: {},
      quiet: QUIET,
      then: {
        a: 'explained',
        b: 'cold-first',
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
        o: 'printed',
        p: 'restart',
        undecided: 'cold-first',
      },
    }),
    // A head that was high has opened the circuit: what stood in the air is gone, and the restart's line reads the supply.
    explained: found({ among: { head: { verdicts: ['high-pressure-open'], to: 'restart' } }, none: 'cold-first' }),
    lines: byKind('restart', { 'three-phase': 'cold-first' }),
    // With an overload open nothing is started to read the supply: the restart asks first whether it has closed.
    'cold-first': found({ among: { open: { verdicts: OPENED_HOT, to: 'restart' } }, none: 'supply' }),
    terminals: include(compressorTerminals, {
      exits: { settled: 'cause-first', left: '!left', raised: '!raised' },
      needs: {},
    }),
    ...afterATrip.first,
    insulation: include(insulation, {
      exits: { good: 'fused', left: '!left', raised: '!raised' },
      needs: {},
      again: { times: 2, spent: 'insulation-open' },
    }),
    'insulation-open': insulationOpen,
    ...afterATrip.decided,
    contradicts,
    'under-load': include(underLoad, {
      exits: { replace: 'repair', good: 'tripped', raised: '!raised' },
      needs: {},
    }),
    printed: include(printedCoil, { exits: { apart: 'who-drops', 'not-apart': 'cold-too' }, needs: {} }),
    'who-drops': include(control, {
      exits: {
        replace: 'repair',
        'dead-tests': 'nor-the-fan',
        settled: 'restart',
        indoor: 'source',
        chatter: 'chatters',
        left: '!left',
        raised: '!raised',
      },
      needs: {},
      again: { times: 2, spent: 'restart' },
    }),
    chatters,
    // A dead 24 V side is sought at its source, so before that.
    blower: include(blower, {
      cabinet: 'indoor',
      exits: {
        done: '!done',
        again: '!again',
        source: 'source-kind',
        settled: 'restart',
        raised: '!raised',
        left: '!left',
      },
      needs: {},
    }),
    'source-kind': kindForSource,
    source: include(indoorSource, {
      cabinet: 'indoor',
      exits: { settled: 'restart', water: 'float-water', raised: '!raised', left: '!left' },
      needs: {},
    }),
    'float-water': include(water, { exits: { restart: 'restart', raised: '!raised', left: '!left' }, needs: {} }),
    // As before the supply of a unit that hums: nothing is started on an open overload.
    'cold-too': found({ among: { open: { verdicts: OPENED_HOT, to: 'restart' } }, none: 'supply' }),
    supply: include(supply, { exits: { good: 'own-coil', raised: '!raised', left: '!left' }, needs: {} }),
    // What could not be tested apart from the line is read live, before anything is started on hope.
    'own-coil': found({ among: { own: { verdicts: ['control-not-apart'], to: 'coil-live' } }, none: 'restart' }),
    'coil-live': include(coilLive, {
      exits: {
        in: 'nor-the-fan',
        replace: 'repair',
        'dead-tests': 'nor-the-fan',
        settled: 'nor-the-fan',
        raised: '!raised',
      },
      needs: {},
      again: { times: 2, spent: 'nor-the-fan' },
    }),
    // The switch was read after the dead tests had found nothing.
    'nor-the-fan': notTheFan('restart'),
    repair: include(repair, { exits: { fitted: 'fitted', left: '!left' }, needs: {} }),
    ...afterATrip.last,
    'fuse-alone': fuseAlone,
    breaker: include(breaker, { exits: { holds: 'tripped', raised: '!raised', left: '!left' }, needs: {} }),
    ...head,
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
    opened: byKind('contactor', { closed: '!again', undecided: '!again' }),
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

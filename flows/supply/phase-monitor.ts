import { choose, confirm, flow, include, judge, measure, verdict, volts } from '../../engine/vocabulary.ts';
import { QUALIFIED } from '../cautions.ts';
import { PHASE_MONITOR } from '../examples/first-looks.ts';
import { LIMITS } from '../limits.ts';
import { probesPlaced } from '../motors/live-probes.ts';
import { NAMEPLATE_VOLTS, whichPlate } from '../unit.ts';
import { noSupply } from './absent.ts';
import { located } from './located.ts';

const SHOWS_FAULT = { judged: ['judged'], evidence: ['light', 'lines'] } as const;

/** A monitor of the three lines holds the unit off: its light, then the lines that it watches. It is no part to replace. */
export const phaseMonitor = flow({
  id: 'phase-monitor',
  version: 1,
  title: 'Phase monitor',
  exits: ['go-on', 'left', 'raised'],
  examples: PHASE_MONITOR,
  steps: {
    // A unit that runs is held off by nothing.
    held: judge('observed', {
      of: { seen: '@round:observation' },
      limits: {},
      quiet: ['a', 'b', 'c', 'd', 'e', 'f', 'g', 'h', 'i', 'j', 'k', 'l', 'm', 'n', 'o', 'p', 'undecided'],
      then: {
        ...{ a: 'light', f: 'light', o: 'light' },
        ...{
          b: '!go-on',
          c: '!go-on',
          d: '!go-on',
          e: '!go-on',
          g: '!go-on',
          h: '!go-on',
          i: '!go-on',
          j: '!go-on',
          k: '!go-on',
        },
        ...{ l: '!go-on', m: '!go-on', n: '!go-on', p: '!go-on', undecided: '!go-on' },
      },
    }),
    light: choose({
      say: 'Is there a phase monitor, and what does its light show? Open nothing for this.',
      body: [
        'A small relay on the three lines, in its own box or behind a window. Its print says which light is a fault.',
        'A light behind the cover is not looked for with power on: it can’t be seen, then.',
      ],
      callouts: [
        {
          level: 'danger',
          text: 'It guards the compressor against a missing or turned line. Its contact is never bridged, its setting never changed to run.',
        },
      ],
      why: 'A monitor that holds off says what the lines do. That is read, before any part is tested.',
      options: {
        fault: {
          label: 'It shows a fault',
          words: ['fault', 'shows fault', 'red', 'red light', 'fault light', 'phase fault', 'blinking'],
          to: 'ready',
        },
        dark: { label: 'It is dark', words: ['dark', 'no light', 'light off', 'light is off'], to: 'ready' },
        good: {
          label: 'It shows good',
          words: ['good', 'green', 'green light', 'ok', 'shows good', 'no fault'],
          to: '!go-on',
        },
        unseen: {
          label: 'None, not sure, or not to be seen from outside',
          words: ['none', 'no monitor', 'not sure', 'cant see', 'cant see it', 'unsure', 'dont know'],
          to: '!go-on',
        },
      },
    }),
    ready: confirm({
      sitting: true,
      say: 'The three lines under power: are you qualified and equipped for live readings?',
      body: [
        'First the dead pairs and the probes, with the cabinet locked. Then people clear, and power. Nothing is moved.',
      ],
      callouts: [QUALIFIED],
      yes: 'Qualified, equipped',
      words: ['qualified', 'ready'],
      no: { label: 'Not here, not now', words: ['not now', 'not qualified'], to: 'unread' },
      next: 'probes',
    }),
    probes: probesPlaced('on the line side of the contactor', 'lines', 'unread'),
    lines: measure({
      say: 'Volts between the three lines: L1 to L2, L2 to L3, L1 to L3.',
      callouts: [{ level: 'danger', text: 'Line voltage is present. The isolation has ended.' }],
      why: 'A missing line, lines too far apart or out of their limits: that is what it holds off for.',
      source: [
        '187 to 253 V for a 208/230 V three-phase: a compressor maker’s bulletin (secondary source)',
        'Unbalance up to 2 % good, above 5 % off: NEMA and unit manuals (secondary source)',
      ],
      circuit: 'line',
      fields: {
        l1l2: volts('L1 to L2', { over: false, words: ['l1-l2'] }),
        l2l3: volts('L2 to L3', { over: false, words: ['l2-l3'] }),
        l1l3: volts('L1 to L3', { over: false, words: ['l1-l3'] }),
        volts: NAMEPLATE_VOLTS,
      },
      cant: 'unread',
      next: 'judged',
    }),
    judged: judge('supply', {
      of: { line: 'lines', plate: '@volts', machine: null },
      limits: LIMITS.supply,
      then: {
        good: 'held-with-good-lines',
        'which-plate': 'printed',
        absent: 'line-side',
        'leg-lost': 'single-phasing',
        neutral: 'unread',
        'no-ground': 'unread',
        'single-phasing': 'single-phasing',
        unbalanced: 'unbalanced',
        out: 'out',
        sag: 'out',
        contacts: 'held-with-good-lines',
        report: 'held-with-good-lines',
        undecided: 'unread',
      },
    }),
    printed: whichPlate('judged', 'out'),
    ...noSupply('The monitor does what it should.', SHOWS_FAULT.judged, SHOWS_FAULT.evidence, 'unread'),
    'single-phasing': verdict({
      verdict: 'single-phasing',
      title: 'Single-phasing: off',
      says: ['One pair is right and two are far below: one line is missing. The monitor does what it should.'],
      next: [
        'Volts across each fuse tell a dead one. Electrician or utility.',
        'It is not started until three lines are there.',
      ],
      who: 'senior',
      ...SHOWS_FAULT,
      raises: 'verdict',
      then: '!raised',
    }),
    unbalanced: verdict({
      verdict: 'supply-unbalanced',
      title: 'The three lines are too far apart: off',
      says: ['Above 5 % the windings cook. The monitor does what it should.'],
      next: ['A senior confirms. Single-phase loads on one leg, or the utility.'],
      who: 'senior',
      ...SHOWS_FAULT,
      raises: 'verdict',
      then: '!raised',
    }),
    // One reading decides no supply: read again, and located.
    out: include(located, { exits: { raised: '!raised' }, needs: { plate: '@volts', unit: '@class' } }),
    'held-with-good-lines': verdict({
      verdict: 'phase-monitor-holds-off',
      title: 'The phase monitor holds it off, and the three lines read within their limits',
      says: [
        'Volts don’t show in which order the lines come, nor what its settings are. No monitor is condemned, no part is at fault.',
      ],
      next: [
        'Off. Rotation by a meter made for it, its delay, settings and own fuses by the maker’s sheet: a senior or an electrician.',
        'It stays in the circuit. The compressor is not run without it.',
      ],
      who: 'senior',
      ...SHOWS_FAULT,
      raises: 'verdict',
      then: '!raised',
    }),
    unread: verdict({
      verdict: 'phase-monitor-not-explained',
      title: 'A phase monitor holds it off, and the lines were not read',
      says: ['What it guards against is open. Nothing is started, and no part is tested for it.'],
      next: [
        'Off. Three line volts by a qualified person would tell.',
        'It stays in the circuit. A senior sees this call.',
      ],
      who: 'senior',
      judged: ['judged'],
      evidence: ['light', 'ready', 'lines'],
      raises: 'verdict',
      then: '!raised',
    }),
  },
});

import { choose, confirm, flow, include, note, verdict } from '../../engine/vocabulary.ts';
import { ice } from '../cooling/ice.ts';
import { water } from '../cooling/water.ts';
import { BLOWER } from '../examples/blower.ts';
import { blowerTests } from './dead-tests.ts';
import { rested } from './drive.ts';
import { blowerLive } from './live.ts';
import { blowerRepair } from './repair.ts';
import { blowerRestart } from './restart.ts';

/** Outdoor runs, the indoor blower doesn't: hands go into the indoor unit, under an isolation of its own. */
export const blower = flow({
  id: 'blower',
  version: 1,
  title: 'Indoor blower',
  exits: ['done', 'again', 'source', 'settled', 'raised', 'left'],
  examples: BLOWER,
  steps: {
    see: choose({
      say: 'The indoor unit, closed: what do you see?',
      body: ['Filter, water, ice on the larger line, doors in place.'],
      why: 'A door off its switch, water or ice explains a still blower before any part does.',
      options: {
        nothing: {
          label: 'Nothing odd',
          words: ['nothing', 'nothing odd', 'looks ok', 'ok', 'fine', 'clean', 'dead'],
          to: 'drive',
        },
        door: { label: 'A door is off its switch', words: ['door off', 'door', 'panel off'], to: 'door' },
        water: { label: 'Water, or the float is up', words: ['water', 'float', 'pan full'], to: 'water' },
        ice: { label: 'Ice on coil or lines', words: ['ice', 'frozen', 'iced'], to: 'ice' },
        hot: { label: 'Ran, got hot and quit', words: ['hot', 'quit hot'], to: 'drive' },
      },
      // The gates ask for a dry place, and for what is seen with the cover off.
      cant: 'drive',
    }),
    // A coil of ice blocks the air by itself. Thawed, the unit is looked at anew; without air, the blower is what is left.
    ice: include(ice, { exits: { thawed: '!again', blower: 'drive', raised: '!raised', left: '!left' }, needs: {} }),
    water: include(water, { exits: { restart: 'restart', raised: '!raised', left: '!left' }, needs: {} }),
    door: confirm({
      say: 'Put the door on its switch. Does the blower run now?',
      body: ['Hands outside. Never tape a door switch down.'],
      why: 'The door’s switch opens the blower’s circuit.',
      yes: 'It runs now',
      words: ['runs', 'runs now', 'running', 'running now', 'it works', 'blower runs'],
      no: { label: 'Still nothing', words: ['still nothing', 'nothing'], to: 'drive' },
      next: 'door-off',
    }),
    'door-off': verdict({
      verdict: 'blower-door-off',
      title: 'The door was off its switch',
      says: ['With the door on its switch the blower runs.'],
      next: ['Does the door hold by itself? Prove it: the blower’s figures.'],
      who: 'junior',
      judged: [],
      evidence: ['see', 'door'],
      then: 'restart',
    }),
    drive: choose({
      say: 'What drives the blower?',
      body: ['From the nameplate or the wiring diagram outside. Thin wires on a plug: electronic.'],
      callouts: [
        {
          level: 'danger',
          text: 'An electronic motor’s own bus holds for five minutes and more. Not sure counts as electronic.',
        },
      ],
      why: 'Only a PSC motor has a run capacitor that the discharge tool is made for.',
      as: 'cabinet:drive',
      anew: true,
      options: {
        psc: { label: 'PSC with a run capacitor', words: ['psc', 'capacitor', 'cap'], to: 'tests' },
        ecm: {
          label: 'Electronically commutated',
          words: ['ecm', 'ecm motor', 'electronic', 'variable speed'],
          to: 'rests',
        },
        inverter: {
          label: 'Indoor part of a mini-split or inverter',
          words: ['mini-split', 'mini split', 'inverter'],
          to: 'electronics',
        },
        unsure: { label: 'Not sure', words: ['dont know', 'don’t know', 'unsure', 'not sure'], to: 'electronics' },
      },
    }),
    // Probes go in beside it: its bus first.
    rests: rested('live', 'electronics'),
    tests: include(blowerTests, {
      exits: { repair: 'repair', clean: 'restart', settled: '!settled', raised: '!raised' },
      needs: {},
    }),
    repair: include(blowerRepair, { exits: { fitted: 'restart', left: '!left' }, needs: {} }),
    restart: include(blowerRestart, {
      exits: { done: '!done', again: '!again', live: 'live', raised: '!raised', left: '!left' },
      needs: {},
    }),
    live: include(blowerLive, { exits: { source: '!source', left: '!left', raised: '!raised' }, needs: {} }),
    electronics: note({
      say: 'The blower’s electronics are not measured here. Note what a senior needs.',
      body: [
        'Stop here with the doors on. Both units off; its bus holds for five minutes and more.',
        'Code or light, connectors dry or wet, what the nameplate says of the motor.',
      ],
      callouts: [{ level: 'danger', text: 'No discharge tool and no capacitor procedure on an electronic motor.' }],
      why: 'Line volts and command at its plug decide, by the maker’s test.',
      next: 'electronics-raised',
      cant: 'electronics-raised',
    }),
    'electronics-raised': verdict({
      verdict: 'electronic-blower-handed-over',
      title: 'The electronic blower stands still: over to a senior',
      says: ['“No capacitor” condemns no electronic motor. Line volts, command, a free wheel and a dry plug do.'],
      next: ['A senior takes it from here, with the maker’s test. Both units stay off.'],
      who: 'senior',
      judged: [],
      evidence: ['see', 'drive', 'electronics'],
      raises: 'not-covered',
      then: '!raised',
    }),
  },
});

import { choose, confirm, count, flow, form, noted, pictured, verdict } from '../../engine/vocabulary.ts';
import { CODE } from '../examples/cooling/code.ts';

/** An error code or a blinking board: recorded, read by the maker’s table, then on by what the table points at. */
export const code = flow({
  id: 'code',
  version: 1,
  title: 'Error code',
  exits: ['restart', 'tests', 'raised'],
  examples: CODE,
  steps: {
    blinks: form({
      say: 'Photo of display or light, and the count of blinks.',
      body: ['Which board, which colour, long and short blinks apart. Watch three rounds. Don’t clear it yet.'],
      why: 'A code is gone once the power was off. The photo keeps it.',
      parts: {
        blinks: count('Blinks', { optional: true, words: ['flashes', 'blinks', 'flash', 'count'] }),
        shown: noted('Board, colour, code as shown', { optional: true }),
        photo: pictured('Photo', { optional: true }),
      },
      next: 'table',
    }),
    table: choose({
      say: 'What does the maker’s table say it is?',
      body: ['The table on the door or in the manual of this very model. Another model’s table counts nothing.'],
      callouts: [{ level: 'notice', text: 'No board is replaced from a code alone.' }],
      why: 'The same blink means another thing on another board.',
      source: ['The maker’s own table decides'],
      options: {
        delay: {
          label: 'A delay or a normal state',
          words: ['delay', 'normal', 'standby', 'anti short cycle', 'time delay', 'heartbeat'],
          to: 'wait',
        },
        protection: {
          label: 'A pressure switch, limit or lockout',
          words: ['pressure', 'high pressure', 'low pressure', 'limit', 'lockout', 'pressure switch', 'hp', 'lp'],
          to: 'protection',
        },
        current: {
          label: 'Compressor or fan: current, start, open circuit',
          words: ['compressor', 'locked rotor', 'overload', 'open circuit', 'start fault', 'fan fault'],
          to: 'protection',
        },
        sensor: { label: 'A sensor', words: ['sensor', 'thermistor', 'coil sensor'], to: 'handed' },
        comm: {
          label: 'Communication',
          words: ['communication', 'comm', 'com error', 'no communication'],
          to: 'handed',
        },
        voltage: { label: 'Supply or control volts', words: ['voltage', 'low voltage', 'supply'], to: 'handed' },
        board: { label: 'The board itself', words: ['board', 'replace board', 'board fault', 'pcb'], to: 'handed' },
        leak: {
          label: 'A refrigerant leak',
          words: ['leak', 'leak detected', 'leak sensor', 'refrigerant'],
          to: 'leak',
        },
        none: {
          label: 'No table, or not in it',
          words: ['no table', 'not listed', 'unknown', 'not sure', 'dont know'],
          to: 'no-table',
        },
      },
    }),
    wait: confirm({
      say: 'Wait five minutes from the last change of call. Does it run now?',
      body: ['Thermostat at COOL, 5 °F below the room, and left alone.'],
      why: 'Boards hold the compressor back after each stop. That is no fault.',
      source: ['Delay of about five minutes: common practice, no single source'],
      yes: 'It runs',
      words: ['runs', 'runs now', 'running', 'it started', 'started'],
      no: {
        label: 'Still not, same code',
        words: ['still not', 'nothing', 'same code', 'still nothing'],
        to: 'protection',
      },
      next: 'delay',
    }),
    'no-table': choose({
      say: 'Without its table the code decides nothing. What does the unit do?',
      body: ['Stand back and look, thermostat calling.'],
      why: 'What it does leads on where a code doesn’t.',
      options: {
        tries: {
          label: 'Silent, hums, or starts and stops',
          words: ['silent', 'hums', 'nothing', 'starts and stops', 'trips', 'fan only'],
          to: 'protection',
        },
        runs: { label: 'It runs and cools', words: ['runs', 'runs and cools', 'cools', 'running'], to: 'old-code' },
        else: {
          label: 'Something else, or not sure',
          words: ['other', 'dont know', 'unsure', 'not sure'],
          to: 'handed',
        },
      },
    }),
    delay: verdict({
      verdict: 'code-was-a-delay',
      title: 'The code told of a delay: no fault',
      says: ['By the maker’s table it waits, and after the wait it runs.'],
      next: ['Take the restart’s figures.', 'Tell the customer: after each stop it waits about five minutes.'],
      who: 'junior',
      judged: [],
      evidence: ['blinks', 'table', 'wait'],
      then: '!restart',
    }),
    protection: verdict({
      verdict: 'code-points-on',
      title: 'The code says what stopped it, not why',
      says: ['A protection did its work. What it protects from is tested; board and switch are not condemned.'],
      next: ['Thermostat off, then the means.', 'The unit’s class, then its own tests.'],
      who: 'junior',
      judged: [],
      evidence: ['blinks', 'table'],
      then: '!tests',
    }),
    handed: verdict({
      verdict: 'code-handed-over',
      title: 'A code that takes the maker’s test: over to a senior',
      says: ['Sensor, wire, volts and connector come before any board. A code alone replaces nothing.'],
      next: [
        'Leave it off. A senior has photo, count and table, and leads the maker’s test.',
        'Tell the customer the code, and that no part is ordered on it.',
      ],
      who: 'senior',
      judged: [],
      evidence: ['blinks', 'table'],
      raises: 'verdict',
      then: '!raised',
    }),
    leak: verdict({
      verdict: 'leak-code',
      title: 'The code tells of a leak: it counts as one',
      says: ['Until a certified person clears it. It is not reset to see whether it comes again.'],
      next: [
        'Air moving, no flame, nothing switched nearby, nobody in a closed room with it.',
        'A certified person searches. Tell the customer to leave the blower running.',
      ],
      who: 'certified',
      judged: [],
      evidence: ['blinks', 'table'],
      raises: 'verdict',
      then: '!raised',
    }),
    'old-code': verdict({
      verdict: 'code-without-fault',
      title: 'It runs and cools in spite of the code',
      says: ['It may be of an earlier stop. It stays on the record, and nothing is condemned.'],
      next: [
        'Take the restart’s figures, then watch one whole cycle.',
        'Tell the customer to note when it comes again.',
      ],
      who: 'junior',
      judged: [],
      evidence: ['blinks', 'table', 'no-table'],
      then: '!restart',
    }),
  },
});

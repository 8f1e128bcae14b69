import type { Finding } from '../../schema.ts';
import { judgement, type Limit } from '../judgement.ts';
import { finding, say } from '../say.ts';
import { SEEN, type Seen, saw, sightings, told } from './seen.ts';

const LIMITS = ['below', 'wait'] as const;
type CheckLimits = Readonly<Record<(typeof LIMITS)[number], Limit>>;
const COLD_ROOM = 'cold-room';

/**
 * What the caller may look at and do: no tool, no cover, nothing reset twice. `leave-off`: something of it should not run
 * until somebody comes. Numbered in the order in which they are said.
 */
export const callerChecks = judgement({
  id: 'caller-checks',
  semantics: 1,
  takes: [...SEEN],
  limits: LIMITS,
  outcomes: ['checks', 'leave-off', 'undecided'],
  run(seen, limits) {
    const off = leftOff(seen);
    const lines = [...off, ...(off.length > 0 ? [] : toTry(seen, limits)), ...always(seen)];
    const findings = lines.map((text, i): Finding => {
      const name = String(i + 1);
      return finding({ name, reading: 'by the caller', word: off.length > i ? 'off' : 'check', text });
    });
    const outcome = off.length > 0 ? 'leave-off' : sightings(seen).length === 0 ? 'undecided' : 'checks';
    return { outcome, findings };
  },
  probe: () => [
    told({ outdoor: 'silent', breaker: 'tripped', display: 'blank' }),
    told({ outdoor: 'hum-still' }),
    told({ breaker: 'hot' }),
    told({ signs: ['ice', 'water', 'alarm'] }),
    told({ kind: COLD_ROOM, outdoor: 'silent' }),
    {},
  ],
});

/** What must not go on running. */
function leftOff(seen: Seen): string[] {
  const off: string[] = [];
  if (saw(seen, 'breaker', 'again', 'hot'))
    off.push('Leave the breaker alone. It tripped twice, was reset, or is warm or wet.');
  if (saw(seen, 'outdoor', 'hum-still', 'fan-still', 'fan-only', 'chatters'))
    off.push('Thermostat OFF until somebody comes: a motor that hums and does not start gets hot.');
  if (saw(seen, 'signs', 'ice')) off.push('Cooling OFF and the fan ON, to thaw the ice. It takes hours.');
  if (saw(seen, 'signs', 'water')) off.push('Cooling OFF: the drain pan is full.');
  if (saw(seen, 'signs', 'alarm')) off.push('Leave the leak alarm as it is, and the doors open.');
  return off;
}

function toTry(seen: Seen, { below, wait }: CheckLimits): string[] {
  const pause = `then wait ${say(wait.value, wait.unit)}`;
  const breaker = saw(seen, 'breaker', 'tripped')
    ? ['The breaker, dry and cool: fully OFF, then ON, once. If it trips again, leave it.']
    : [];
  if (saw(seen, 'kind', COLD_ROOM))
    return [...breaker, 'Doors closed, nothing warm put in, the switch of the unit on.'];
  return [
    ...breaker,
    ...(saw(seen, 'display', 'blank') ? ['New batteries in the thermostat.'] : []),
    `Thermostat on COOL and ${say(below.value, '°F')} below the room, ${pause}.`,
    'The filter: grey and clogged means a clean one, or none for the moment.',
    'The outdoor unit clear of leaves, looked at from outside.',
    'The switch at the indoor unit on.',
    'A load-control box of the utility: its light says whether it holds the unit off.',
  ];
}

const always = (seen: Seen): string[] => [
  saw(seen, 'kind', COLD_ROOM)
    ? 'Open no panel. Write down the temperature of the goods every hour.'
    : 'Open no panel, reset nothing twice, touch nothing at the unit.',
];

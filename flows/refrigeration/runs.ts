import { choose, confirm, form, one, verdict } from '../../engine/vocabulary.ts';

/** The evaporator of a box, by eye. */
export const evaporator = <const T extends string>(next: T) =>
  form<T>({
    say: 'At the evaporator, eyes only: its fans, its coil, its thermostat and solenoid.',
    body: ['Nothing is opened or moved by hand. Leave out with _ what can’t be seen.'],
    callouts: [{ level: 'danger', text: 'Fans that stand may start at any moment. Hands and tools stay outside.' }],
    why: 'Fans that stand, an iced coil or a missing call hold a sound condensing unit off.',
    parts: {
      fans: one(
        'Its fans',
        {
          turn: { label: 'They turn', words: ['fans turn', 'fans run', 'turn'] },
          still: { label: 'They stand still', words: ['fans still', 'fans stand', 'still'] },
          some: { label: 'One of them stands', words: ['one still', 'one stands', 'one fan still'] },
        },
        { optional: true },
      ),
      coil: one(
        'Its coil',
        {
          clear: { label: 'Clear, or a thin even frost', words: ['coil clear', 'clear', 'frost'] },
          iced: { label: 'Iced over', words: ['iced', 'ice', 'coil iced', 'frozen'] },
        },
        { optional: true },
      ),
      call: one(
        'Its thermostat',
        {
          calls: { label: 'It calls, the box is warmer than its setting', words: ['calls', 'it calls', 'call'] },
          satisfied: { label: 'It doesn’t call', words: ['no call', 'satisfied', 'doesnt call'] },
        },
        { optional: true },
      ),
      valve: one(
        'Its solenoid valve',
        {
          hums: { label: 'It hums or is warm', words: ['hums', 'warm', 'solenoid hums'] },
          quiet: { label: 'Quiet and cold', words: ['quiet', 'solenoid quiet', 'no hum'] },
        },
        { optional: true },
      ),
    },
    cant: next,
    next,
  });

/** The condensing unit of a box runs and the box stays warm: its air on both sides, then the circuit. No dead test tells. */
export const runs = {
  'runs-dirt': choose({
    say: 'It runs. Condenser and its fan: what do you see?',
    body: ['Grease, dust, cardboard in front of it; its fan turning, air coming through. Touch nothing that turns.'],
    why: 'A condenser without air looks like a lost charge.',
    options: {
      clean: { label: 'Clean, air comes through', words: ['clean', 'fine', 'ok'], to: 'runs-box' },
      dirty: { label: 'Dirty or blocked', words: ['dirty', 'plugged', 'blocked', 'grease'], to: 'runs-clean' },
      fan: { label: 'Its fan stands still or is slow', words: ['fan still', 'fan slow', 'no fan'], to: 'runs-fan' },
    },
    cant: 'runs-box',
  }),
  'runs-clean': confirm({
    say: 'Off at its means, your own lock on, the blade at a stand: clean the condenser and clear the air’s way.',
    yes: 'Cleaned, clear',
    words: ['cleaned', 'clean now', 'clear'],
    no: { label: 'Not now', words: ['not now', 'not today'], to: 'runs-box' },
    unsure: 'runs-box',
    next: 'box-cleaned',
  }),
  'box-cleaned': verdict({
    verdict: 'box-condenser-cleaned',
    title: 'The condenser of the box was dirty: cleaned, and the box is watched',
    says: ['It ran without air. Whether that was all, the box shows: its air now, and again after 20 minutes.'],
    next: ['It doesn’t pull down: the evaporator, then a certified person.', 'The customer watches the goods.'],
    who: 'junior',
    judged: ['holds'],
    evidence: ['goods', 'runs-dirt', 'runs-clean'],
    then: '!settled',
  }),
  'runs-fan': verdict({
    verdict: 'box-fan-weak',
    title: 'The condenser’s fan stands or is slow while the compressor runs: off, its dead tests decide',
    says: ['A fan that is slow or stands is a capacitor, a wiring or a motor question. By sight none is condemned.'],
    next: ['Off at the means: without air the head climbs. Section, spin and windings next, dead.'],
    who: 'junior',
    judged: ['holds'],
    evidence: ['goods', 'runs-dirt'],
    then: '!go-on',
  }),
  'runs-box': evaporator('runs-warm'),
  'runs-warm': verdict({
    verdict: 'box-runs-warm',
    title: 'It runs and the box stays warm: evaporator first, then the circuit',
    says: ['Fans that stand, an iced coil, a door that stays open, or the charge. No dead test tells which.'],
    next: [
      'Iced, or a fan that stands: a senior leads on there. Clear and turning: a certified person reads the circuit.',
      'No charge is judged on ice or on a dirty condenser. The customer moves the goods.',
    ],
    who: 'senior',
    judged: ['holds'],
    evidence: ['goods', 'runs-dirt', 'runs-clean', 'runs-box'],
    raises: 'not-covered',
    then: '!raised',
  }),
};

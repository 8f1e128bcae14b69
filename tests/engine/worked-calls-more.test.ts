/** Two more worked calls as a technician types them: volts that a delay withholds, and a resistor that reads like a leak. */
import { expect, test } from 'vitest';
import { Conversation, plate } from '../people.ts';
import { evidence, here, typed } from './given.ts';

const MEANS = 'pull-out, no other feed, two legs, outlet';

test('given 0 V two minutes after the call was changed, when its delay is over, then the tripped switch is found and its cause cleaned', () => {
  const c = new Conversation({ equipment: { facts: plate('21.2', '118', '1.4') } });
  typed(c, ['a', 'psc', 'calling', 'yes', MEANS, 'yes', 'clean, 1 cap, 55+5 6% 440']);
  typed(c, ['121 / 0.2 0 0.1 / 0 0 / 121', '9.3 / 0.6 0.1 0.5 / 9.3', 'fuses 0.1 0.2', '24', 'just now']);
  // Two minutes later: the delay may still run, and the record says until when.
  typed(c.wait(2), ['y-c 0 coil 0']);
  expect([here(c), c.verdicts]).toEqual(['waited', []]);
  expect(c.notices).toMatch(/2\u2009min since the call was changed[\s\S]*for 3\u2009min/);
  typed(c.wait(4), ['over', 'left alone', 'y-c 25.6 coil 0.0', 'delay .1 lp .1 hp 25.6']);
  expect([here(c), c.verdicts]).toEqual(['high-pressure', []]);
  expect(c.notices).toMatch(/25\.6\u2009V across the high-pressure switch: it is open/);
  typed(c, ['coil matted, cottonwood', 'cleaned']);
  expect(c.verdicts).toEqual(['high-pressure-open']);
  // Heat kills the fan's section too: the block follows, its coil within 8 to 20 Ω.
  typed(c, ['fuses 0.1 0.2 contacts .1 .1 coil 12.4 t1g ol t2g ol', 'no diagram', 'wires off']);
  typed(c, ['herm 54.6 fan 4.97 hf 4.555 case ol']);
  expect(evidence(c)).toMatch(/−0\.7\u2009%[\s\S]*−0\.6\u2009%/);
  typed(c, ['spin free', 'cr .7 cs 2.1 sr 2.8 g ol', 'fan 14 31 45 frame ol', 'closed']);
  typed(c, ['239 238 comp 17.6 fan 1.2 split 18']);
  expect(evidence(c)).toMatch(/83\u2009% of its RLA[\s\S]*86\u2009% of its FLA/);
  expect([c.verdicts.at(-1), c.place]).toEqual(['repair-proven', '!done']);
});

test('given 15 kΩ across a start capacitor, when the resistor is off at one end, then it is the resistor, and the relay fails', () => {
  const c = new Conversation({ equipment: { facts: plate('9.6', '56', '1') } });
  typed(c, ['d', 'walk-in', 'product 47 hours 3 r404a hums trips', 'yes']);
  // Unit cooler fans and defrost have a breaker of their own.
  typed(c, ['breaker, heater, two legs, outlet', 'yes', 'clean, 2 caps, 25 6% 440, two terminals']);
  typed(c, ['121 / 0 0 0 / 0 0 / 0 0 0 / 121']);
  // R·C·ln(√2·440 V / 5 V) with 20 kΩ and 25 µF is 2.41 s, never under 5 s; the start part's print is not known yet.
  expect(c.prompt().body.join('\n')).toMatch(
    /Hold 5\u2009s[\s\S]*2\.41\u2009s[\s\S]*30\u2009s where it may be a start/,
  );
  typed(c, ['9.3 / 0.2 0.1 / 9.3', 'contacts .1 .1 coil 12.6 t1g ol t2g ol overload 0.1', 'start and run']);
  typed(c, ['no diagram', 'wires off', '24.6 case ol', 'potential', 'resistor one end off', '189-227 MFD 330 VAC']);
  // 201 µF ± 1.9 % + 2 counts lies within 189 to 227; 15 kΩ is the resistor, whole.
  typed(c, ['start 201 bleed 15k 1-2 ol 5-2 5.4k']);
  expect(c.verdicts).toEqual(['capacitor-good', 'start-relay-fails']);
  expect(evidence(c)).toMatch(/Contacts 1–2: open[\s\S]*Coil 5–2: good/);
  typed(c, ['spin free', 'cr 1.4 cs 4.6 sr 6.0 g ol', 'nothing', 'start parts fitted', 'wires back', 'closed']);
  typed(c, ['239 238 comp 7.1 fan .9 box 47', 'box 41']);
  expect([c.verdicts.at(-1), c.place]).toEqual(['repair-proven', '!done']);
});

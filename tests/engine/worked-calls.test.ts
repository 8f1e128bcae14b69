/** Worked calls as a technician types them (invented; their figures fit by computation), as far as this version leads them. */
import { describe, expect, test } from 'vitest';
import type { GivenParts } from '../../engine/schema.ts';
import { Conversation, plate, stocked } from '../people.ts';
import { BLOCK, evidence, here, strip } from './given.ts';

/** Types like a surface does: what was understood of a refused line is sent again with the rest. */
class Call extends Conversation {
  private readonly asked = new Set<string>();
  /** Questions answered, without repeats. */
  get prompts(): number {
    return this.asked.size;
  }
  private draft: GivenParts = {};
  override types(...lines: string[]): this {
    for (const line of lines) {
      const asked = this.place.replace(/~\d+/g, '');
      this.type(line, 'ines', { draft: this.draft });
      if (this.refusal && this.refusal.code !== 'missing')
        throw new Error(`"${line}" at ${this.place}: ${this.refusal.text}`);
      this.draft = this.refusal?.draft ?? {};
      if (this.kinds.includes('answered')) this.asked.add(asked);
    }
    return this;
  }
}
const shown = (c: Conversation): string => [...c.prompt().body, c.notices].join('\n');

test('given a fan that runs and a compressor that hums, when HERM reads 36.1 of 45 ±6 %, then it is replaced and proven', () => {
  const c = new Call().types(
    'd  fan runs comp hums 3 sec clicks',
    'psc',
    'fit ok',
    'pull-out + breaker, no other feed',
  );
  expect(c.refusal?.parts).toEqual(['supply', 'source']);
  c.types('two legs, outlet', 'locked tagged', 'cover off clean, 1 cap, 45+5 6% 440', '121 / 0.2 0 0.1 / 0 0 / 121');
  // R·C·ln(√2·440 V / 5 V) with 20 kΩ and 45 µF: 4.34 s; never under 5 s.
  expect(shown(c)).toMatch(/Hold 5\u2009s[\s\S]*4\.34\u2009s/);
  c.types(
    '9.3 / 0.6 0.1 0.5 / 9.3',
    'fuses 0.1 0.1  contacts .1 .1  coil 12.6  t1g ol t2g ol',
    'no diagram',
    'photo wires; wires off herm fan c',
    'herm 36.1 fan 5.02 hf 4.4 case ol',
  );
  expect(c.verdicts).toEqual(['section-fails-value']);
  const said = evidence(c);
  for (const figure of ['−19.8\u2009%', '42.30–47.70', 'FAN: pass', '4.407']) expect(said).toContain(figure);
  c.types('spin free', 'cr .9 cs 2.7 sr 3.6 g ol', 'coil dirty', 'other 45+5 440 herm 45.3 fan 5.04');
  expect(evidence(c)).toMatch(/\+0\.7\u2009%[\s\S]*\+0\.8\u2009%/);
  c.types('fitted', 'wires back', 'RLA 17.9 LRA 96 fan FLA 1.2', 'closed', '241 240 comp 13.1 fan .9 split 19');
  expect(evidence(c)).toMatch(/73\u2009% of its RLA[\s\S]*75\u2009% of its FLA/);
  expect([c.verdicts.at(-1), c.place]).toEqual(['repair-proven', '!done']);
  expect(c.prompts).toBeLessThanOrEqual(22);
});

test('given a still fan and a charged section, when FAN reads 2.9 of 5 ±6 %, then an old mark is no emergency and FAN is out', () => {
  const record = { equipment: { facts: plate('14.1', '73', '0.8') }, truck: [stocked('40+5', '440')] };
  const c = new Call(record).types(
    'c',
    'psc',
    'neither',
    'yes',
    'pull-out, no other feed, two legs, line side',
    'yes',
    'clean, 1 cap',
  );
  c.types('238 / 0 0 0 / 0 0 / 238', '9.2 / 0.3 212 188 / 9.2');
  expect([here(c), strip(c)]).toEqual(['residual', 'being-proved']);
  expect(c.notices).toContain(
    'FAN–C still holds 212\u2009V, over 5\u2009V. A wire, tab or winding on that section may be open.',
  );
  c.types('9.2 / 0.3 0.4 0.1 / 9.2', 'fan tab burnt, old mark');
  expect([c.place, strip(c.tap({ choice: 'old-mark' }))]).toEqual(['!hazard', 'proved']);
  c.types(BLOCK, 'no diagram', 'wires off herm fan c ; 40/5 6% 440', 'herm 39.4 fan 2.9 hf 2.70 case ol');
  expect(c.verdicts).toEqual(['section-fails-value']);
  // 2.9 ± (1.9\u2009% + 0.02) is 2.82 to 2.98, wholly under 4.70; 39.4 in series with 2.9 is 2.701.
  expect(evidence(c)).toMatch(/HERM: (pass|conditional pass)[\s\S]*FAN: fail[\s\S]*−42\.0\u2009%[\s\S]*2\.701/);
  c.types('spin free, 12 turns', 'fan 14 31 45 frame ol');
  expect(c.notices).toMatch(/45\u2009Ω[\s\S]*the sum fits/);
  c.types('tab', 'first herm 40.3 fan 5.06');
  c.types('fitted', 'wires back', 'closed', '239 238 comp 10.4 fan .7 split 18');
  expect(evidence(c)).toMatch(/0\.7\u2009A, 88\u2009% of its FLA/);
  expect([c.verdicts.at(-1), c.place]).toEqual(['repair-proven', '!done']);
  expect(c.entries.filter((e) => e.kind === 'counted').map((e) => e.body)).toEqual([
    { item: 'run-40-5-440', left: 0, used: 1 },
  ]);
  expect(c.entries.some((e) => e.kind === 'alarmed')).toBe(false);
  expect(c.prompts).toBeLessThanOrEqual(21);
});

test('given 4.52 on FAN of 45+5, when it is read again with a lead on C, then the capacitor is good and the bearings are not', () => {
  const c = new Call({ equipment: { facts: plate('17.9', '96', '1.2') }, truck: [stocked('45+5', '440')] }).types(
    'c',
    'psc',
    'neither',
    'yes',
    'pull-out, no other feed, two legs, outlet',
    'yes',
    'clean, 1 cap, 45+5 6% 440',
  );
  c.types('120 / 0 0 0 / 0 0 / 120', '9.4 / 0.2 0.1 0.1 / 9.4', BLOCK, 'no diagram', 'done', 'herm 44.6 fan 4.52');
  expect([here(c), c.verdicts]).toEqual(['third', []]);
  // 44.6 in series with 5.03 is 4.520; the band of a good FAN on HERM to FAN is 4.25 to 4.74.
  expect(c.notices).toContain('4.25–4.74');
  c.types('fan 5.03 hf 4.52 case ol');
  expect(c.verdicts[0]).toBe('capacitor-good');
  expect(evidence(c)).toMatch(/−0\.9\u2009%[\s\S]*\+0\.6\u2009%[\s\S]*4\.52\u2009µF/);
  c.types('spin: stiff, scrapes, play in shaft', 'fan 15 33 48 frame ol');
  expect(c.verdicts).toEqual(['capacitor-good', 'fan-bearings']);
  c.types('nothing', 'motor fitted', '45+5 6% 440', 'first herm 45.2 fan 5.01', 'fitted', 'wires back', 'closed');
  c.types('240 239 comp 12.8 fan 1.1 split 19');
  expect([c.verdicts.at(-1), c.place]).toEqual(['repair-proven', '!done']);
  // The third reading and the motor beside the capacitor are two prompts more than the plainest call.
  expect(c.prompts).toBeLessThanOrEqual(24);
});

describe('given 40+5 ±6 %, when HERM reads 37.4 and then 37.3', () => {
  const truck = [
    stocked('45+5', '440'),
    stocked('40+5', '440'),
    stocked('35+5', '440'),
    stocked('40', '440'),
    stocked('5', '440'),
  ];
  const upTo = (options = {}): Call =>
    new Call({ truck, ...options }).types(
      'd',
      'psc',
      'yes',
      'pull-out, no other feed, two legs, outlet',
      'yes',
      'clean, 1 cap, 40+5 6% 370',
      '120 / 0 0 0 / 0 0 / 120',
    );
  const BOTH = ['9.4 / 0.2 0.1 0.1 / 9.4', BLOCK, 'no diagram', 'done', 'herm 37.4 fan 4.91 hf 4.34 case ol'];
  test('then one repeat is asked, and out twice is replaced against the habit', () => {
    const c = upTo();
    expect(shown(c)).toMatch(/Hold 5\u2009s[\s\S]*3\.72\u2009s/);
    c.types(...BOTH);
    expect([here(c), c.verdicts]).toEqual(['sections', []]);
    expect(c.notices).toMatch(/−6\.5\u2009%[\s\S]*39\u2009%[\s\S]*habit \(36\.00–44\.00\u2009µF\) would keep it/);
    c.types('repeat, leads zeroed: herm 37.3');
    expect([c.verdicts, evidence(c)]).toEqual([
      ['section-fails-value'],
      expect.stringMatching(/−6\.8\u2009%[\s\S]*33\u2009%[\s\S]*Out twice/),
    ]);
    const doubts = c.entries.flatMap((e) => (e.kind === 'concluded' ? e.body.findings.map((f) => f.doubt) : []));
    expect(doubts[0]).toContain('36.39–38.21');
    // The block is finished; then the truck: one that fits, two singles, and two that don't.
    c.types('spin free', 'cr .9 cs 2.7 sr 3.6 g ol', 'nothing that explains it');
    expect(shown(c)).toMatch(/1\. .*40\+5[\s\S]*2\. .*jumper[\s\S]*\+12\.5\u2009%[\s\S]*−12\.5\u2009%/);
    c.types('first, herm 40.2 fan 5.03', 'fitted', 'wires back', '17.9 96 1.2', 'closed');
    c.types('240 239 comp 13 fan .9 min 229 split 18');
    expect([c.verdicts.at(-1), c.place]).toEqual(['repair-proven', '!done']);
    expect(c.prompts).toBeLessThanOrEqual(22);
  });
  test('then an unknown meter gives the same word, weaker, and says that it is assumed', () => {
    const c = upTo({ meter: null }).types(...BOTH);
    expect([here(c), c.notices]).toEqual([
      'sections',
      expect.stringMatching(/44\u2009%[\s\S]*±\(3\u2009% \+ 5 counts\) is assumed/),
    ]);
  });
});

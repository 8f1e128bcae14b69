import { mostUrgent, stepUp, URGENCIES, type Urgency, urgencyOfHeat } from '../../calc/air/urgency.ts';
import type { Finding, Parts } from '../../schema.ts';
import { judgement, type Limit } from '../judgement.ts';
import { chose, past, read, untaken } from '../probing.ts';
import { chosenOf, figureOf } from '../read.ts';
import { finding, say } from '../say.ts';
import { feltHeat, HEAT_LIMITS, type HeatLimits } from './felt-heat.ts';
import { probeHeat } from './heat-index.ts';

const LIMITS = [...HEAT_LIMITS, 'goods', 'goodsHours'] as const;
type UrgencyLimits = HeatLimits & Readonly<Record<'goods' | 'goodsHours', Limit>>;
interface Reason {
  readonly urgency: Urgency;
  readonly finding: Finding;
}
const OURS = 'our setting: no published scale of urgency';

/**
 * How soon somebody must go, and why. Takes `hazard` (what the caller reports; none), `air` (indoor °F, humidity %),
 * `people` (who is vulnerable; none) and `goods` (product °F, hours since). A hazard is now; heat by its category, one
 * step up for somebody vulnerable; perishable goods above their limit go first, with the hours counted.
 */
export const urgency = judgement({
  id: 'urgency',
  semantics: 1,
  takes: ['hazard', 'air', 'people', 'goods'],
  limits: LIMITS,
  outcomes: [...URGENCIES, 'undecided'],
  run({ hazard, air, people, goods }, limits, { alarm }) {
    const [danger, product] = [hazardOf(hazard, alarm), goodsOf(goods, limits)];
    const heat = heatOf(air, people, limits);
    const reasons = [danger, heat.reason, product].filter((reason) => reason !== null);
    const findings = [danger?.finding, ...heat.findings, product?.finding].filter((said) => said !== undefined);
    if (reasons.length === 0) return { outcome: 'undecided', findings };
    return { outcome: mostUrgent(reasons.map((reason) => reason.urgency)), findings };
  },
  probe: (limits) => probeCalls(limits),
});

/** Whoever reports a hazard is told to leave: emergency services come before us. */
function hazardOf(hazard: Parts | undefined, alarm: string | undefined): Reason | null {
  const reported = named(hazard, 'hazard');
  const seen = reported.length > 0 || alarm === undefined ? reported : [alarm];
  if (seen.length === 0) return null;
  const text = 'A hazard is reported. Emergency services come first, and a van goes now.';
  return {
    urgency: 'now',
    finding: finding({ name: 'Hazard', reading: seen.join(', '), word: 'now', text, source: OURS }),
  };
}

function heatOf(air: Parts | undefined, people: Parts | undefined, limits: UrgencyLimits) {
  const felt = feltHeat(air, limits);
  const who = named(people, 'vulnerable');
  if (felt.category === null && who.length === 0) return { reason: null, findings: [felt.finding] };
  // Nobody read how hot it is: for somebody vulnerable that is no reason to wait.
  const plain = felt.category === null ? 'soon' : urgencyOfHeat(felt.category);
  const urgency = who.length === 0 ? plain : stepUp(plain);
  const text =
    who.length === 0
      ? `Nobody vulnerable is named: ${WORDS[plain]}.`
      : `Somebody vulnerable is there, so it is one step up: ${WORDS[urgency]}.`;
  const said = finding({ name: 'People', reading: who.join(', ') || 'none named', word: urgency, text, source: OURS });
  return { reason: { urgency, finding: said }, findings: [felt.finding, said] };
}

function goodsOf(goods: Parts | undefined, limits: UrgencyLimits): Reason | null {
  const product = figureOf(goods, 'goods', '°F');
  if (product === null) return null;
  const [most, hours] = [say(limits.goods.value, '°F'), figureOf(goods, 'since', 'h')];
  const above = product.gt(limits.goods.value);
  const left = hours && past(limits.goodsHours.value, hours.neg());
  const counted =
    left === null
      ? 'Nobody knows since when: count from the last reading that was in.'
      : left.gt(0)
        ? `After ${say(hours ?? 0, 'h')}, ${say(left, 'h')} of ${say(limits.goodsHours.value, 'h')} are left.`
        : `After ${say(hours ?? 0, 'h')} the ${say(limits.goodsHours.value, 'h')} are over: the owner decides on the goods.`;
  return {
    urgency: above ? 'first' : 'soon',
    finding: finding({
      name: 'Perishable goods',
      reading: say(product, '°F'),
      limits: `${most} or less`,
      word: above ? 'first' : 'in',
      text: above
        ? `The goods are at ${say(product, '°F')}, above ${most}. ${counted}`
        : `The goods are at ${say(product, '°F')}.`,
      source: limits.goods.source,
    }),
  };
}

/** What was chosen, without "none". */
const named = (parts: Parts | undefined, key: string): string[] =>
  chosenOf(parts, key).filter((option) => option !== 'none' && option !== 'cant');

const WORDS: Readonly<Record<Urgency, string>> = {
  soon: 'the next free visit',
  today: 'today',
  first: 'today, before everything else',
  now: 'now',
};

function probeCalls(limits: UrgencyLimits): Partial<Record<'hazard' | 'air' | 'people' | 'goods', Parts>>[] {
  const people: Parts = { vulnerable: chose('infant') };
  const nobody: Parts = { vulnerable: chose('none') };
  const over = past(limits.goods.value, '0.1');
  const hours = (since: Parts): { goods: Parts } => ({ goods: { goods: read(over, '°F'), ...since } });
  return [
    ...probeHeat(limits).flatMap(({ air }) => [
      { air, people: nobody },
      { air, people },
    ]),
    { hazard: { hazard: chose('smoke') } },
    { hazard: { hazard: chose('none') } },
    { goods: { goods: read(limits.goods.value, '°F'), since: read(1, 'h') } },
    hours({ since: read(past(limits.goodsHours.value, '-0.01'), 'h') }),
    hours({ since: read(limits.goodsHours.value, 'h') }),
    hours({ since: untaken }),
    {},
  ];
}

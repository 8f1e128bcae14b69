/** What may take a capacitor's place: the published rules, and a worked truck. */
import { type StockItem, substitutes, type Wanted } from '../../engine/calc/substitutes.ts';
import { type Check, checks } from './check.ts';

const TIP = 'a supplier’s Q&A page and a manufacturer’s tip in a trade newsletter (secondary source)';
const PRACTICE = { source: 'common practice, no single source', status: 'CP' as const };
/** "45+5 440": µF per section, volts. */
const part = (text: string, of: Partial<StockItem> = {}): StockItem => {
  const [sections = '', volts = ''] = text.split(' ');
  return { ...{ id: text, kind: 'run', sectionsMicrofarads: sections.split('+'), volts, count: 1 }, ...of };
};
const found = (text: string, stock: readonly StockItem[]) => {
  const { kind, sectionsMicrofarads, volts } = part(text);
  const wanted: Wanted = { kind, sectionsMicrofarads, volts, belowPercent: '6', abovePercent: '6' };
  return substitutes(wanted, stock);
};
/** Its place among the choices, or why it is in none. */
const verdict =
  (wanted: string, id: string, ...stock: StockItem[]) =>
  (): string => {
    const { choices, rejected } = found(wanted, stock);
    const at = choices.findIndex((choice) => choice.parts.some((p) => p.id === id));
    const reason = rejected.find((r) => r.id === id)?.reason;
    if (reason?.why === 'value')
      return `${reason.deviationPercent.gt(0) ? '+' : ''}${reason.deviationPercent.toFixed(1)} %`;
    return reason ? reason.why : `choice ${at + 1}`;
  };
const check = (
  what: string,
  input: string,
  published: string,
  ours: Check['ours'],
  more: Partial<Check> = {},
): Check => ({
  ...{ what, input, published, unit: '', ours, source: TIP, status: 'V2' as const },
  ...more,
});
const truck = ['45+5 440', '40+5 440', '35+5 440', '40 440', '5 440'].map((text) => part(text));
const on = (id: string) => verdict('40+5 370', id, ...truck);

checks('substitutes', [
  check('370 V by 440 V', '45+5 µF', 'choice 1', verdict('45+5 370', '45+5 440', part('45+5 440'))),
  check('440 V by 370 V', '45+5 µF', 'volts', verdict('45+5 440', '45+5 370', part('45+5 370'))),
  check('440 V by 370 V', '45+5 µF', 'choice 1', verdict('45+5 440', '45+5 370', part('45+5 370')), { wrong: true }),
  check('45 µF by 50 µF', '440 V', '+11.1 %', verdict('45 440', '50 440', part('50 440'))),
  check('next size up', '45 µF by 50 µF', 'choice 1', verdict('45 440', '50 440', part('50 440')), {
    ...PRACTICE,
    wrong: true,
  }),
  check('a worked truck for 40+5 370 V', '40+5 440', 'choice 1', on('40+5 440'), PRACTICE),
  check('a worked truck for 40+5 370 V', '40/440 and 5/440', 'choice 2', on('40 440'), PRACTICE),
  check('a worked truck for 40+5 370 V', '45+5 440', '+12.5 %', on('45+5 440'), PRACTICE),
  check('a worked truck for 40+5 370 V', '35+5 440', '-12.5 %', on('35+5 440'), PRACTICE),
  check(
    'two in parallel',
    '35 + 10 µF for 45',
    'choice 1',
    verdict('45 440', '35 440', part('35 440'), part('10 440')),
    PRACTICE,
  ),
  check(
    'two in parallel, one of too few volts',
    '35 + 10 µF for 45',
    'volts',
    verdict('45 440', '10 370', part('35 440'), part('10 370')),
    PRACTICE,
  ),
  check(
    'a start capacitor in a run circuit',
    '45 µF',
    'kind',
    verdict('45 330', '45 330', part('45 330', { kind: 'start' })),
    PRACTICE,
  ),
  check('none left', '45 µF', 'none-left', verdict('45 440', '45 440', part('45 440', { count: 0 })), PRACTICE),
]);

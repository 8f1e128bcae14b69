/** What people say beside an answer. */

/** Rule 4: danger, here and now. */
export const DANGER = [
  'I smell smoke',
  'i got shocked',
  'theres fire in the panel',
  'gas smell here',
  'he fainted up here',
  'flames coming out of it',
  'the cap exploded',
  'someone is hurt',
] as const;
/** Words that are also the trade's words for old marks: one tap is asked. */
export const MAYBE = [
  'burnt tab',
  'the contactor is pitted and arced',
  'burned wire here',
  'igniter looks old',
] as const;
/** No danger, though it sounds like it. */
export const NOT_DANGER = ['no smoke, just dusty', 'smoke detector chirps in the hall', 'no fire, all calm'] as const;
export const FREE = [
  'customer says it quit last night',
  'hang on, phone call',
  'the neighbour has the same unit',
  'what now',
  'not sure what you mean',
  '👍',
  'ok',
  'yes but the breaker is on',
  'c or d',
  'psc i think',
  '44 ,5',
  'volts 12',
  'skip',
  'back',
  'back yes',
  'why',
  'where',
  'help',
  'senior',
  'photo',
  'note the pad is cracked',
] as const;
export const SKIPS = ['skip no tool for it', 'cant', 'not sure', 'no such tool', 'skip it is raining in'] as const;
/** By people who only look in. */
export const FROM_AFAR = [
  'note the customer called again',
  'ask what does it read',
  'reply the label',
  'senior',
  'where',
  'approve seen on video',
  'release all clear, seen in person',
  'yes',
  'd',
  'take over',
  'sign',
  'go on',
] as const;

/** A line as it goes wrong: too large, in another unit, cut short, doubled. */
export function spoiled(line: string, how: number): string {
  const figure = /-?\d+(\.\d+)?/;
  switch (how % 5) {
    case 0:
      return line.replace(figure, '99999');
    case 1:
      return line.replace(figure, '$& psig');
    case 2:
      return line.slice(0, Math.max(1, Math.floor(line.length / 2)));
    case 3:
      return `${line} ${line}`;
    default:
      return line.replace(figure, '-$&');
  }
}

/** The words of the commands, as people type them. Lower case, without accents, apostrophes and punctuation. */
import type { CommandName } from '../../schema.ts';

const words = (text: string): ReadonlySet<string> => new Set(text.trim().split(/\s+/));
const phrases = (text: string): string[] => text.split(',').map((phrase) => phrase.trim().replace(/\s+/g, ' '));

/** Said at both ends of a command, no part of it. */
export const POLITE = words(
  'please pls plz hey hi ok okay now just thanks thx por favor lets guys oops sorry wait um hm',
);

export const STOP = words('stop stopp sotp stpo stp sstop pause pasue puase alto parar pare stopping pausing');
/** "stop valve" is a part, "stopping distance" no wish: behind these a first word is no command. */
export const STOP_NOUNS = words(
  'valve valves switch button screw screws light start starts collar nut cock sign leak distance',
);
/** What stands before or behind "stop" in a wish: "i need to stop now". */
export const STOP_FILLING =
  words(`i we us im me you need needs want to must have has gotta gonna going got should lets let can could
  id like would had better now here for a an minute moment sec second while this the it everything all work working job call stop
  am are is everybody everyone again and then so right immediately asap just please today ok hey`);

/** A sentence with one of these reports nothing: it denies, asks, or speaks of later. */
export const NO_REPORT =
  words(`not no never isnt wasnt if when until till once before after unless wait did does will would should
  shall why ask note reply`);
export const REPORTS: readonly [CommandName, string[]][] = [
  [
    'power is back',
    phrases(`power is back, powers back, power back on, power came back, power came on, power has come back, power comes back,
      power went back on, power is back on, power just came back, power just came on, power got turned on, power was turned on,
      power turned back on, electricity is back, electricity came back, someone turned the power on, somebody turned the power on,
      someone turned it back on, somebody turned it back on, power is restored, power was restored, power got restored, power restored,
      breaker is back on, breakers back on, breaker got turned on, breaker got turned back on, breaker was turned on,
      breaker was turned back on, breaker got flipped on, breaker got flipped back on, turned the breaker on, turned the breaker back on,
      turned my breaker on, turned my breaker back on, flipped the breaker on, flipped the breaker back on, flipped my breaker on,
      flipped my breaker back on, reset the breaker on me, disconnect is back in, disconnect got put back in, put the disconnect back in,
      put the pull out back in, pull out is back in, pullout is back in, its live again, it is live again, its energized again,
      it is energized again, unit just started, unit just came on, unit just kicked on, fan just started, fan just came on,
      fan just kicked on, volvio la luz, regreso la luz, llego la luz, volvio la corriente, regreso la corriente, prendieron el breaker,
      prendieron la luz, subieron el breaker, conectaron la luz`),
  ],
  [
    'lock is off',
    phrases(`lock is off, locks off, lock came off, lock has come off, lock fell off, lock was taken off, lock got taken off,
      lock was removed, lock got removed, lock is gone, locks gone, lock is missing, lock was cut, lock got cut, lock is cut,
      took my lock off, took off my lock, took the lock off, took off the lock, removed my lock, removed the lock, cut my lock, cut the lock,
      lock and tag are off, lock and tag came off, my lock is not there, pulled my lock, pulled the lock off, quitaron mi candado,
      quitaron el candado, cortaron el candado, cortaron mi candado`),
  ],
];

/** "back pressure", "back panel": behind these "back" is no command. */
export const BACK_NOUNS =
  words(`pressure pressures door side panel wall plate cover fan yard of to ordered feed feeding on in at and up
  seat from after hurts soon later is was with then order half together again online wired`);

const SPELLINGS: readonly [CommandName, string][] = [
  ['back', 'back, go back, undo, change last answer, change my last answer'],
  [
    'why',
    `why, why this, why is this asked, why do you ask, why is that, why is this needed, why do i need this, why do we need this,
      why do i need that, why do i have to, why tho, y tho, how come, what for, por que, para que`,
  ],
  ['where', 'where, where am i, where are we, where was i, where were we, status, donde estoy, en que voy'],
  [
    'help',
    `help, help me, commands, what can i type, what do i type, what should i type, what can i do, what do i do, what do i do now,
      what, how, menu, options, ayuda, que hago, que escribo`,
  ],
  [
    'stop',
    `stop, stop stop, pause, alto, para, para ya, para todo, parale, parele, detente, detengase, break time, take a break, taking a break, on break, going on break, lunch, lunch break, at lunch,
      going to lunch, brb, be right back, stop work, halt, descanso`,
  ],
  [
    'go on',
    'go on, goon, continue, resume, carry on, keep going, continue work, continuar, seguir, contnue, continu, resum',
  ],
  [
    'senior',
    `senior, get senior, get a senior, get the senior, get me a senior, get me the senior, get me a senior tech, senior tech,
      call senior, call a senior, call the senior, need senior, need a senior,
      i need a senior, ask senior, ask a senior, ask the senior, senior please,
      call the boss, call my boss, get my boss, need backup, senoir`,
  ],
  [
    'photo',
    'photo, photos, a photo, send photo, send a photo, send photos, take photo, take a photo, add photo, picture, pic, pics, send pic, send a pic, take pic, take a pic, send picture, take a picture, foto',
  ],
  ['skip', 'skip, skip it, skip this, skip that, skip step, skip this step, skip this one'],
  ['take back', 'take back, take it back, take that back, takeback, i take it back, i take that back'],
  ['hand over', 'hand over, handover, hand it over, hand off, handoff'],
  ['take over', 'take over, takeover, i take over, taking over, im taking over, ill take over, take it over'],
  ['power is back', 'power is back, power back'],
  ['lock is off', 'lock is off, lock off, locks off, my lock off, my lock is off'],
  [
    'alarm',
    'alarm, emergency, raise alarm, raise the alarm, its an emergency, this is an emergency, emergencia, emergancy, sos, mayday',
  ],
  ['happening', 'happening, happening now, its happening, its happening now, it is happening, it is happening now'],
  ['old mark', 'old mark, old marks, its an old mark, it is an old mark, an old mark, oldmark'],
  ['not here', 'not here, heard of not here, heard of it not here, heard it not here'],
  ['seen', 'seen, seen it, ive seen it, i have seen it, acknowledged, ack'],
  ['release', 'release'],
  ['approve', 'approve'],
  ['ask', 'ask'],
  ['reply', 'reply'],
  ['note', 'note'],
  ['sign', 'sign, sign it, sign the record, sign record'],
  ['send back', 'send back, send it back, sendback'],
];

/** Command by its whole message. */
export const WHOLE: ReadonlyMap<string, CommandName> = new Map(
  SPELLINGS.flatMap(([name, spellings]) =>
    phrases(spellings).map((spelling): [string, CommandName] => [spelling, name]),
  ),
);

/** Command words that take a rest: a reason, a name, a question, a correction. The longest first. */
export const WITH_REST: readonly (readonly [CommandName, readonly string[]])[] = (
  [
    [
      'hand over',
      `handing it over, handing over, hand this over, hand it over, hand over, handover, hand it off, handing off, hand off, handoff,
        pass it to, give it to, give this to`,
    ],
    ['take back', 'take it back, take that back, take back, takeback'],
    ['send back', 'send it back, send back, sendback'],
    ['skip', 'skip'],
    ['release', 'release'],
    ['approve', 'approve'],
    ['ask', 'ask'],
    ['reply', 'reply'],
    ['note', 'note'],
    ['back', 'back'],
    ['senior', 'senior'],
  ] as const
).flatMap(([name, spellings]) => phrases(spellings).map((spelling) => [name, spelling.split(' ')] as const));

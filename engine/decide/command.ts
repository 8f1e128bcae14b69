/** The words that work everywhere: stop, back, why, hand over, power is back, and the senior's. */
import { isHalt } from '../compile.ts';
import { skipTarget } from '../flatten.ts';
import { placeOf } from '../fold.ts';
import { isAnyBegun } from '../forget.ts';
import { whileOff } from '../power.ts';
import { prompt, promptAgain } from '../prompt.ts';
import { memoryOf, placeIdOf, planOf, type Standing } from '../replay.ts';
import type { CommandName, Draft, Parts } from '../schema.ts';
import { decideAmend, decideWithdraw } from './amend.ts';
import { mayAnswer } from './answer.ts';
import { type Context, NOBODY, type Relation, refuse, type Scribe, type UseCase, type Wish } from './types.ts';

export interface Command {
  readonly name: CommandName | 'made safe';
  readonly text: string;
  readonly of: number | null;
  readonly safe?: Parts;
}

export function decideCommand(s: Standing, command: Command, c: Context, keep: Scribe): Wish {
  const [memory, here, plan] = [memoryOf(s), placeIdOf(s), planOf(s)];
  const words = command.text.trim();
  const reason = words === '' ? undefined : keep.keep(words);
  const withReason = reason === undefined ? {} : { reason };
  const withText = reason === undefined ? {} : { text: reason };
  const holds = Object.values(memory.isolations).some((i) => i.holder === c.by);
  const may = (use: UseCase, relation: Partial<Relation> = {}): boolean =>
    c.may(use, { ...NOBODY, holder: holds, reason: reason !== undefined, ...relation });
  const only = (who: string): Wish => refuse('no-right', `Only ${who} can do that.`);
  const write = (...drafts: Draft[]): Wish => ({ drafts });

  switch (command.name) {
    case 'why': {
      const p = prompt(s, c.at);
      return {
        info: [p.why ?? 'This question has no longer reason than its words.', ...p.sources.map((x) => `Source: ${x}`)],
      };
    }
    case 'where':
      return { info: whereAmI(s, c) };
    case 'help':
      return { info: help(s, c) };
    case 'photo': {
      const asked = prompt(s, c.at).parts.find(({ kind }) => kind === 'photo');
      const here = asked
        ? `This question takes a photo (${asked.ask}): send it with the camera button${asked.optional ? ', or leave it out' : ''}.`
        : 'This question takes no photo. Type note and what it would show.';
      return { info: [here] };
    }
    case 'back': {
      const of = command.of ?? lastAnswer(s, c.by);
      const place = of === null ? null : placeOf(memory, of);
      if (of === null || place === null)
        return refuse('nothing-to-change', 'There is no answer that could be changed. Fallen answers are asked again.');
      if (words !== '') return decideAmend(s, { of, text: words }, c, keep);
      return { again: promptAgain(s, place, of, c.at) };
    }
    case 'take back': {
      const of = command.of ?? lastAnswer(s, c.by);
      if (of === null) return refuse('nothing-to-change', 'There is no answer that could be taken back.');
      return decideWithdraw(s, of, reason, c);
    }
    case 'stop':
      if (here === '!stopping' || here === '!paused') return { info: ['Already stopping.'] };
      if (plan.manual.caller) return putAway(s, may('answer'));
      return may('stop') ? write({ kind: 'paused', body: {} }) : only('somebody who is signed in');
    case 'made safe': {
      if (here !== '!stopping') return refuse('nothing-to-change', 'Nothing is being stopped.');
      if (!may('stop')) return only('somebody who is signed in');
      const off = command.safe?.lock?.kind === 'choice' && command.safe.lock.chosen[0] === 'off';
      return write(
        { kind: 'paused', body: { safe: command.safe ?? {} } },
        ...(off ? [{ kind: 'voided' as const, body: { reason: 'lock-off' as const, since: c.at } }] : []),
      );
    }
    case 'go on':
      if (memory.stop === null) return refuse('nothing-to-change', 'Nothing is paused.');
      if (memory.stop === 'asked')
        return refuse('missing', 'Say first how it is left: the cover and the lock.', { parts: ['cover', 'lock'] });
      return may('answer') ? write({ kind: 'resumed', body: {} }) : only('somebody who takes part in this job');
    case 'senior':
      return may('raise')
        ? {
            ...write({ kind: 'raised', body: { why: 'asked', ...withText } }),
            info: ['A senior is told. You can go on, or leave it off and come back.'],
          }
        : only('somebody who is signed in');
    case 'skip': {
      const place = plan.places.get(here);
      if (!place || !('parts' in place.step)) return refuse('nothing-to-change', 'There is nothing to skip here.');
      const barred = mayAnswer(place, memory, c);
      if (barred) return barred;
      if (place.gate && place.cant === null)
        return refuse('gate', 'This is a gate. It can’t be skipped. Type stop to leave the unit off, or senior.');
      if (skipTarget(place) === null)
        return refuse(
          'unknown-option',
          'This question decides the way. Choose one of its answers, or type senior or stop.',
        );
      if (reason === undefined)
        return refuse('reason-needed', 'Type skip and the reason, for example: skip no meter for this.');
      return write({ kind: 'answered', body: { place: here, parts: {}, skipped: reason } });
    }
    case 'hand over': {
      if (!may('hand-over')) return only('the holder, a senior, the owner or the dispatcher');
      const wanted = words.toLowerCase();
      const found = c.people.filter(
        (p) => p.id === words || p.name.toLowerCase().split(/\s+/).includes(wanted) || p.name.toLowerCase() === wanted,
      );
      const to = found[0];
      if (found.length !== 1 || !to) {
        return refuse('unknown-person', `Type hand over and one name of: ${c.people.map((p) => p.name).join(', ')}.`);
      }
      return write({ kind: 'handed-over', body: { to: to.id } });
    }
    case 'take over': {
      const { handover } = memory;
      if (!handover) return refuse('nothing-to-change', 'Nobody is handing this job over.');
      if (handover.to !== c.by || !may('take-over')) return only('the person it is handed to');
      return write({ kind: 'acknowledged', body: { of: handover.seq } });
    }
    case 'power is back':
    case 'lock is off': {
      if (!may('report')) return only('somebody who is signed in');
      if (!isAnyBegun(plan, memory) && whileOff(plan, memory).length === 0)
        return {
          ...write({ kind: 'noted', body: { as: 'observation', text: keep.keep(`${command.name} ${words}`.trim()) } }),
          info: ['Noted. No isolation was standing.'],
        };
      return write({
        kind: 'voided',
        body: { reason: command.name === 'power is back' ? 'power-back' : 'lock-off', since: c.at, ...withText },
      });
    }
    case 'alarm':
      return may('alarm')
        ? write({ kind: 'alarmed', body: { hazard: 'other', ...withText } })
        : only('somebody who is signed in');
    case 'happening':
      if (!memory.hazard) return write({ kind: 'alarmed', body: { hazard: 'other', ...withText } });
      return write({ kind: 'alarmed', body: { hazard: 'burning', ...withText } });
    case 'old mark':
      if (!memory.hazard) return refuse('nothing-to-change', 'No word is waiting for an answer.');
      if (memory.hazard.by !== c.by) return only('the person who wrote it');
      return write({ kind: 'noted', body: { as: 'old-mark', of: memory.hazard.seq } });
    case 'not here': {
      const { alarm } = memory;
      if (!alarm) return refuse('nothing-to-change', 'There is no emergency.');
      if (!may('not-here', { own: alarm.by === c.by })) return only('the person who raised it, a senior or the owner');
      return write({ kind: 'released', body: { of: alarm.seq, as: 'not-here' } });
    }
    case 'seen':
      if (!memory.alarm) return refuse('nothing-to-change', 'There is no emergency.');
      return write({ kind: 'acknowledged', body: { of: memory.alarm.seq } });
    case 'release':
      if (!memory.alarm) return refuse('nothing-to-change', 'There is no emergency.');
      if (!may('release')) return only('a senior or the owner, not the holder,');
      if (reason === undefined) return refuse('reason-needed', 'Type release and the reason.');
      return write({ kind: 'released', body: { of: memory.alarm.seq, as: 'clear', ...withReason } });
    case 'approve': {
      if (!may('approve')) return only('a senior or the owner, not the holder,');
      if (here === '!held') return write({ kind: 'approved', body: { what: 'tries', ...withReason } });
      const place = plan.places.get(here);
      if (place?.step.verb === 'approval') {
        const { step, cabinet } = place;
        return write({ kind: 'approved', body: { what: step.what, cabinet, ...withReason } });
      }
      return refuse('nothing-to-change', 'Nothing waits for an approval.');
    }
    case 'ask':
      if (!may('ask')) return only('a senior or the owner');
      return reason === undefined
        ? refuse('reason-needed', 'Type ask and the question.')
        : write({ kind: 'asked', body: { text: reason } });
    case 'reply':
      if (!memory.question) return refuse('nothing-to-change', 'Nobody asked anything.');
      if (!may('reply')) return only('somebody who takes part in this job');
      return reason === undefined
        ? refuse('reason-needed', 'Type reply and your answer.')
        : write({ kind: 'replied', body: { of: memory.question.seq, text: reason } });
    case 'note':
      if (!may('note')) return only('somebody who is signed in');
      return reason === undefined
        ? refuse('reason-needed', 'Type note and what you saw.')
        : write({ kind: 'noted', body: { as: 'note', text: reason } });
    case 'sign':
      if (!plan.endings.includes(here)) return refuse('nothing-to-change', 'Only a finished job is signed.');
      if (memory.signed) return refuse('closed', 'It is signed already.');
      return may('sign') ? write({ kind: 'signed', body: {} }) : only('a senior or the owner, not the holder,');
    case 'send back':
      if (!may('send-back')) return only('a senior or the owner, not the holder,');
      if (!plan.endings.includes(here)) return refuse('nothing-to-change', 'Only a finished job is sent back.');
      return reason === undefined
        ? refuse('reason-needed', 'Type send back and what is missing.')
        : write({ kind: 'sent-back', body: { reason } });
  }
}

/** The person's own last standing answer, else null. */
export function lastAnswer(s: Standing, by: string): number | null {
  const own = Object.values(memoryOf(s).facts)
    .filter((f) => f.by === by)
    .map((f) => f.seq);
  return own.length === 0 ? null : Math.max(...own);
}

function whereAmI(s: Standing, c: Context): string[] {
  const p = prompt(s, c.at);
  const strip = p.isolation.map(
    (l) =>
      `${l.cabinet}: ${l.words}${l.until === null ? '' : `, ${minutesLeft(l.until, c.at)} min left if its holder stays silent`}`,
  );
  const { places } = planOf(s);
  const round = places.get(placeIdOf(s))?.round ?? 1;
  const rounds = Math.max(...[...places.values()].map((x) => x.round));
  const stand = `Round ${round} of ${rounds}. ${p.progress.answered} answers stand.`;
  return [`${p.progress.label}: ${p.title}`, ...strip, stand];
}
const minutesLeft = (until: string, now: string): number =>
  Math.max(0, Math.floor((Date.parse(until) - Date.parse(now)) / 60_000));

function help(s: Standing, c: Context): string[] {
  const p = prompt(s, c.at);
  const here =
    isHalt(placeIdOf(s)) || p.parts.length === 0
      ? []
      : [p.line === null ? 'Tap an answer, or type its words.' : `Type the line: ${p.line}`];
  return [
    ...here,
    'Always: stop · why · where · back (changes your last answer) · take back · skip and a reason · note and words · photo · senior.',
    'Safety: power is back · lock is off · alarm. Words of fire, smoke, shock or gas raise the emergency by themselves.',
    'hand over and a name changes the holder.',
  ];
}

/** A line that went dead, a wrong number: nothing is open on a call, so it is safe at once. */
function putAway(s: Standing, may: boolean): Wish {
  if (!may) return refuse('no-right', 'Only whoever takes calls can do that.');
  if (memoryOf(s).alarm)
    return refuse('gate', 'A danger was reported on this call. Take it to its end, so that somebody goes.');
  return { drafts: [{ kind: 'paused', body: { safe: {} } }] };
}

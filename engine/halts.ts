/** What is shown where the job rests outside the manual: emergency, stop, hand-over, hold. The words are the same on every surface. */
import type { Halt } from './compile.ts';
import type { Plan } from './flatten.ts';
import { spentTries } from './fold.ts';
import type { Memory } from './memory.ts';
import type { Option, Part, Prompt } from './schema.ts';

type Card = Pick<Prompt, 'kind' | 'title' | 'body' | 'callouts' | 'parts' | 'why' | 'sources'>;
const option = (id: string, label: string, words: string[] = []): Option => ({ id, label, words });
const pick = (ask: string, options: Option[]): Part => ({
  kind: 'choose',
  key: 'choice',
  ask,
  optional: false,
  several: false,
  options,
  remembered: [],
});

const PAUSED = {
  title: 'Paused. Come back when it is safe.',
  body: ['Type go on to continue where you were. An isolation that is too old is proved again.'],
};
const PUT_AWAY = {
  title: 'This call was put away.',
  body: ['It opened no job. Go on where it was when the caller is back; what was answered is kept.'],
};

export function haltCard(halt: Halt, plan: Plan, memory: Memory): Card {
  switch (halt) {
    case '!emergency':
      return emergency(memory);
    case '!hazard':
      return {
        kind: 'hazard-question',
        title: 'Is this happening now, or is somebody hurt?',
        body: ['Your words may mean danger here and now, or an old mark, long ago, or elsewhere.'],
        callouts: [{ level: 'warning', text: 'If it is happening now: get away first, answer later.' }],
        parts: [
          pick('Which is it?', [
            option('happening', 'Happening now, or someone is hurt', [
              'happening',
              'yes',
              'now',
              'right now',
              'its happening',
              'happening now',
              'hurt',
            ]),
            option('old-mark', 'An old mark, long ago, or elsewhere', [
              'old mark',
              'no',
              'old',
              'just old',
              'old burn',
              'old burn mark',
              'not now',
              'long ago',
              'elsewhere',
            ]),
          ]),
        ],
        why: 'Some words of the trade for old marks are also words for fire and shock.',
        sources: [],
      };
    case '!stopping':
      return {
        kind: 'stopping',
        title: 'Before you stop: make it safe.',
        body: ['Say how you leave it. The job waits, and nothing is lost.'],
        callouts: [{ level: 'warning', text: 'Nobody may reach open conductors while you are away.' }],
        parts: [
          {
            ...pick('The cover', [
              option('on', 'Cover is on', ['cover on', 'covers on', 'covered', 'closed', 'closed up', 'buttoned up']),
              option('off', 'Cover is off, area guarded', ['cover off', 'left open']),
            ]),
            key: 'cover',
          },
          {
            ...pick('The lock', [
              option('stays', 'My lock stays on', [
                'lock stays',
                'locked',
                'lock on',
                'locks on',
                'lock stays on',
                'lock still on',
                'my lock on',
              ]),
              option('off', 'No lock on, power may return', [
                'no lock',
                'lock off',
                'lock removed',
                'no lock on',
                'unlocked',
              ]),
            ]),
            key: 'lock',
          },
        ],
        why: 'A job that is left half open hurts the next person.',
        sources: ['29 CFR 1910.333(b)(2)'],
      };
    case '!paused':
      return {
        kind: 'paused',
        ...(plan.manual.caller ? PUT_AWAY : PAUSED),
        callouts: [],
        parts: [
          {
            kind: 'confirm',
            key: 'ok',
            ask: 'Continue',
            optional: false,
            options: [
              option('yes', 'Go on', ['go on', 'im back', 'we are back', 'were back', 'back at it', 'lets go']),
            ],
          },
        ],
        why: null,
        sources: [],
      };
    case '!taking-over':
      return {
        kind: 'taking-over',
        title: 'This job changes hands.',
        body: [
          'The new holder puts their own lock on before the old one comes off.',
          'Nothing that was proved counts for the new holder. Findings are kept.',
          'If nobody takes it: leave it off, close it, come back.',
        ],
        callouts: [{ level: 'danger', text: 'Not proved dead for you. Begin with make-dead.' }],
        parts: [
          {
            kind: 'confirm',
            key: 'ok',
            ask: 'Take it over',
            optional: false,
            options: [
              option('yes', 'I take it over', [
                'take over',
                'got it',
                'i got it',
                'ill take it',
                'im on it',
                'mine now',
              ]),
            ],
          },
        ],
        why: 'A lock belongs to one person. Another person’s readings do not protect you.',
        sources: ['29 CFR 1910.333(b)(2)'],
      };
    case '!held':
      return {
        kind: 'held',
        title: 'Held. A senior has been told.',
        body: [heldWords(plan, memory), 'Nobody there? Leave it off, close it, come back.'],
        callouts: [{ level: 'danger', text: 'Hands out. Treat every capacitor as charged.' }],
        parts: [],
        why: 'Three lines that did not come out mean that something here is not understood.',
        sources: ['our setting: three lines a call'],
      };
  }
}

function heldWords(plan: Plan, memory: Memory): string {
  return spentTries(plan, memory) ?? '';
}

function emergency(memory: Memory): Card {
  const { emergencyNumber, region } = memory.settings;
  const number = region ? `${emergencyNumber} (${region})` : emergencyNumber;
  const gas = memory.alarm?.hazard === 'gas' || memory.alarm?.hazard === 'refrigerant';
  return {
    kind: 'emergency',
    title: 'Emergency. Get away from the unit.',
    body: [
      'Don’t touch a person until the power is off.',
      `Call ${number}.`,
      ...(gas ? ['Touch no switch and light no flame. Call from outside.'] : ['Use water on nothing electrical.']),
      'CPR and AED if somebody does not respond.',
      'After any shock, a medical check, even if the person feels fine.',
      'The senior and the dispatcher are told. Nobody answers? Leave it off, safe, come back.',
    ],
    callouts: [{ level: 'danger', text: 'Every isolation of this job has ended. Nothing counts as dead.' }],
    parts: [
      pick('Answer when you are away and safe', [
        option('seen', 'Seen', [
          'seen',
          'ok',
          'got it',
          'understood',
          'im safe',
          'we are safe',
          'im out',
          'we are out',
        ]),
        option('not-here', 'Heard of, not here', ['not here']),
      ]),
    ],
    why: 'The job holds until a senior or the owner releases it.',
    sources: [],
  };
}

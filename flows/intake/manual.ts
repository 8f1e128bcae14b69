/** A call as it is taken, with the caller on the line: dangers first, then who and where, what they see, what they may try. */
import {
  choose,
  confirm,
  degrees,
  flow,
  form,
  hours,
  humidity,
  include,
  isolation,
  judge,
  manual,
  noted,
  several,
  shown,
  verdict,
} from '../../engine/vocabulary.ts';
import { LIMITS } from '../limits.ts';
import { CALL, CLOSED_PAGE } from './examples.ts';
import { sight } from './sight.ts';
import { who } from './who.ts';

const OF = {
  display: '@caller:display',
  blower: '@caller:blower',
  outdoor: '@caller:outdoor',
  breaker: '@caller:breaker',
  signs: '@caller:signs',
  recent: '@caller:recent',
  kind: '@caller:kind',
} as const;
const COLD_ROOM = { fact: '@caller:kind', part: 'kind', is: ['cold-room'] } as const;
const LEAVE = 'Out of the house or away from the unit, everybody. Nobody goes back for anything.';

const root = flow({
  id: 'intake-root',
  version: 1,
  title: 'Is anybody in danger?',
  exits: ['open', 'told', 'known'],
  examples: CALL,
  steps: {
    'danger-first': form({
      say: 'Is any of this happening?',
      why: 'Danger comes before everything else, and nobody in danger is asked to check anything.',
      parts: {
        hazard: several('Happening now', {
          burning: { label: 'Burning smell', hazard: 'burning', words: ['burning smell', 'smells burnt'] },
          smoke: { label: 'Smoke', hazard: 'smoke', words: ['smoke'] },
          fire: { label: 'Fire', hazard: 'fire', words: ['fire', 'flames'] },
          sparks: { label: 'Sparks', hazard: 'fire', words: ['sparks', 'sparking'] },
          panel: { label: 'Buzzing or hot electrical panel', hazard: 'burning', words: ['buzzing panel', 'hot panel'] },
          water: { label: 'Water on anything electrical', hazard: 'shock', words: ['water on electrics'] },
          gas: { label: 'Gas smell', hazard: 'gas', words: ['gas', 'gas smell'] },
          shock: { label: 'Somebody got a shock', hazard: 'shock', words: ['shock'] },
          hurt: { label: 'Somebody is hurt or faints', hazard: 'hurt', words: ['hurt', 'fainted', 'heat stroke'] },
          none: { label: 'None of these', alone: true, words: ['no', 'none', 'nothing', 'all fine'] },
        }),
      },
      next: 'sort-danger',
    }),
    'sort-danger': judge('danger', {
      of: { hazard: 'danger-first' },
      limits: {},
      quiet: ['clear', 'undecided', 'gas', 'danger'],
      then: { gas: 'tell-gas', danger: 'tell-danger', clear: 'call-who', undecided: 'call-who' },
    }),
    'tell-gas': confirm({
      say: 'Tell the caller now, in these words.',
      body: [
        LEAVE,
        'Touch no switch, no breaker, no phone indoors. No flame. Call emergency services and the gas company from outside.',
      ],
      yes: 'Told',
      words: ['told', 'done'],
      cant: { label: 'Line is gone', words: ['hung up', 'line dropped'], to: 'call-who' },
      next: 'call-who',
    }),
    'tell-danger': confirm({
      say: 'Tell the caller now, in these words.',
      body: [
        LEAVE,
        'Power off at the breaker only where it is dry and safe to reach. Touch nobody who may be under power.',
        'Call emergency services now. After any shock a medical check, even if they feel fine.',
      ],
      yes: 'Told',
      words: ['told', 'done'],
      cant: { label: 'Line is gone', words: ['hung up', 'line dropped'], to: 'call-who' },
      next: 'call-who',
    }),
    'call-who': include(who, { exits: { on: 'danger-still' }, needs: {} }),
    'danger-still': judge('danger', {
      of: { hazard: 'danger-first' },
      limits: {},
      quiet: ['clear', 'undecided', 'gas', 'danger'],
      then: { gas: 'how-soon-now', danger: 'how-soon-now', clear: 'open-already', undecided: 'open-already' },
    }),
    'how-soon-now': judge('urgency', {
      of: { hazard: 'danger-first', air: null, people: null, goods: null },
      limits: LIMITS.urgency,
      then: {
        now: 'emergency-taken',
        first: 'emergency-taken',
        today: 'emergency-taken',
        soon: 'emergency-taken',
        undecided: 'emergency-taken',
      },
    }),
    'emergency-taken': verdict({
      verdict: 'emergency-call',
      title: 'Emergency call',
      says: ['A hazard was reported. Nobody was asked to check anything at the unit.'],
      next: ['Emergency services first. A senior releases the call before anybody works on it.'],
      who: 'senior',
      judged: ['how-soon-now'],
      evidence: ['danger-first'],
      raises: 'verdict',
      then: '!open',
    }),
    'open-already': judge('called-before', {
      of: { before: '@caller:before' },
      limits: {},
      then: { open: 'known-call', new: 'call-sight', undecided: 'call-sight' },
    }),
    'known-call': verdict({
      verdict: 'called-again',
      title: 'Called again about an open call',
      says: ['A call about this trouble is open already, so no second one is opened.'],
      next: ['Tell the caller how it stands. What is new goes on that call as a note.'],
      who: 'junior',
      judged: [],
      evidence: ['danger-first'],
      then: '!known',
    }),
    'call-sight': include(sight, { exits: { on: 'who-suffers' }, needs: {} }),
    'who-suffers': form({
      say: 'Is anybody there whom heat endangers?',
      why: 'It moves the call up.',
      parts: {
        vulnerable: several('Endangered by heat', {
          infant: { label: 'Infant', words: ['baby', 'newborn'] },
          old: { label: '65 or older', words: ['elderly', 'old people', 'senior citizen'] },
          pregnant: { label: 'Pregnant' },
          condition: { label: 'Medical condition', words: ['sick', 'oxygen', 'heart'] },
          medicine: { label: 'Medicine kept cold', words: ['insulin', 'medicine'] },
          none: { label: 'Nobody', alone: true, words: ['no', 'none', 'nobody'] },
        }),
      },
      next: 'how-hot',
    }),
    'how-hot': form({
      say: 'How hot is it, and how humid if they know?',
      why: 'The heat index decides how soon somebody goes.',
      source: ['US National Weather Service, heat index', 'FDA Food Code: perishable food at 41 °F or below'],
      parts: {
        indoor: degrees('Indoors', { optional: true, words: ['inside', 'house', 'room'] }),
        outdoor: degrees('Outdoors', { optional: true, words: ['outside'] }),
        rh: humidity('Humidity', { optional: true, words: ['humidity'] }),
        goods: degrees('Goods', { optional: true, words: ['product', 'box'], when: COLD_ROOM }),
        since: hours('Hours above', { optional: true, words: ['hours', 'for'], when: COLD_ROOM }),
      },
      next: 'own-words',
    }),
    'own-words': form({
      say: 'Anything else, in the caller’s words?',
      parts: { said: noted('In the caller’s words', { optional: true, as: 'caller:said' }) },
      next: 'sort-checks',
    }),
    'sort-checks': judge('caller-checks', {
      of: OF,
      limits: LIMITS.callerChecks,
      quiet: ['checks', 'leave-off', 'undecided'],
      then: { checks: 'try-it', 'leave-off': 'make-safe', undecided: 'try-it' },
    }),
    'make-safe': form({
      say: 'Have the caller do this, and nothing else.',
      why: 'Running it on does more damage, or hurts somebody.',
      parts: {
        did: several('Done', {
          done: { label: 'All of it', words: ['done', 'yes', 'ok'] },
          part: { label: 'Some of it' },
          refused: { label: 'Won’t or can’t', words: ['no', 'cant', 'refuses'] },
        }),
      },
      shows: [shown('caller-checks', { of: OF, limits: LIMITS.callerChecks })],
      next: 'how-soon',
    }),
    'try-it': choose({
      say: 'Go through these with the caller. Does it cool now?',
      body: ['One at a time; what was looked at already is passed over.'],
      why: 'Each takes no tool and no cover off, and each has ended calls without a visit.',
      shows: [shown('caller-checks', { of: OF, limits: LIMITS.callerChecks })],
      options: {
        no: { label: 'No, still not', words: ['no', 'still not', 'nope'], to: 'how-soon' },
        later: { label: 'They try it later', words: ['later', 'they will try'], to: 'how-soon' },
        cools: { label: 'Yes, it cools', words: ['yes', 'fixed', 'it cools', 'works'], to: 'call-settled' },
      },
      cant: 'how-soon',
    }),
    'call-settled': verdict({
      verdict: 'settled-on-the-phone',
      title: 'Settled on the phone',
      says: ['It cools after what the caller tried.'],
      next: ['If it stops again, they call again, and somebody goes.'],
      who: 'junior',
      judged: [],
      evidence: ['try-it'],
      then: '!told',
    }),
    'how-soon': judge('urgency', {
      of: { hazard: 'danger-first', air: 'how-hot', people: 'who-suffers', goods: 'how-hot' },
      limits: LIMITS.urgency,
      then: {
        now: 'call-causes',
        first: 'call-causes',
        today: 'call-causes',
        soon: 'call-causes',
        undecided: 'call-causes',
      },
    }),
    'call-causes': judge('likely-causes', {
      of: OF,
      limits: {},
      then: { ranked: 'to-load', certified: 'to-load', undecided: 'to-load' },
    }),
    'to-load': judge('load', {
      of: OF,
      limits: LIMITS.load,
      then: { marking: 'tell-caller', common: 'tell-caller', nothing: 'tell-caller', undecided: 'tell-caller' },
    }),
    'tell-caller': form({
      say: 'What did you tell the caller?',
      why: 'Whoever calls back has to say the same.',
      parts: {
        told: several(
          'Told',
          {
            coming: { label: 'Somebody comes, and roughly when', words: ['somebody comes', 'when'] },
            off: { label: 'Leave it off', words: ['leave it off', 'off'] },
            thaw: { label: 'Cooling off, fan on, to thaw', words: ['thaw'] },
            cool: { label: 'Go where it is cool, drink water', words: ['cool place', 'drink water'] },
            goods: { label: 'Doors closed, move the goods', words: ['move goods', 'doors closed'] },
            danger: { label: 'At smoke, smell or sparks: out, and emergency services', words: ['call emergency'] },
            nothing: { label: 'Nothing of this', alone: true, words: ['none', 'nothing', 'no'] },
          },
          { as: 'caller:told' },
        ),
        promised: noted('In your words', { optional: true, as: 'caller:promised' }),
      },
      next: 'call-taken',
    }),
    'call-taken': verdict({
      verdict: 'call-taken',
      title: 'Call taken',
      says: ['What is likely rests on what the caller said. Nothing was measured.'],
      next: ['The call stands on the board. Send somebody who can take it, with what is to be loaded.'],
      who: 'junior',
      judged: ['how-soon', 'call-causes', 'to-load'],
      evidence: ['danger-first', 'tell-caller'],
      then: '!open',
    }),
  },
});

/** Nothing is opened on this manual: it has no cabinet, and this page stands at no place. */
const closed = isolation({
  page: flow({
    id: 'stays-closed',
    version: 1,
    title: 'Stays closed',
    exits: ['proved'],
    examples: CLOSED_PAGE,
    steps: { closed: confirm({ say: 'The unit stays closed.', yes: 'Closed', next: '!proved' }) },
  }),
  leaving: {},
  reentry: { age: 'closed', void: 'closed', holder: 'closed' },
  minutes: LIMITS.isolation.minutes,
  prompts: [],
  controlMost: LIMITS.isolation.control,
  grows: { step: 'closed', part: 'count' },
});

export const intake = manual({
  id: 'intake',
  version: 1,
  title: 'Call',
  root,
  isolation: closed,
  cabinets: {},
  fromRecord: [],
  labelTolerance: LIMITS.label.tolerance,
  caller: { opens: ['open'] },
  endings: {
    open: { title: 'Taken', says: 'The call stands on the board.' },
    told: { title: 'Settled', says: 'Settled on the phone. No visit was opened.' },
    known: { title: 'Known already', says: 'A call about this is open. No second one was opened.' },
  },
});

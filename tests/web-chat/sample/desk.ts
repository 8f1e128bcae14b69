/** A desk that shows the sample prompts as jobs named by them and takes no answer. Only for drawing. */
import { type Desk, type JobView, NotFound, type Person, type TicketLine } from '../../../engine/desk/index.ts';
import { CALL, sampleBoard, sampleCall, sampleShop } from './office.ts';
import { NOW, PROMPTS } from './prompts.ts';
import { sampleReports } from './reports.ts';
import { sampleReview } from './review.ts';

const person = (id: string, name: string, initials: string, roles: Person['roles']): Person => ({
  id,
  name,
  initials,
  roles,
  certified: false,
  meter: null,
  active: true,
});
export const CREW = [person('jo', 'Jo Pell', 'JP', ['technician']), person('sam', 'Sam Orr', 'SO', ['senior'])];

const line = (seq: number, standing: TicketLine['standing'], title: string, ...says: string[]): TicketLine => ({
  seq,
  at: NOW,
  by: seq % 2 ? 'jo' : 'sam',
  title,
  says,
  kind: standing === 'event' ? 'raised' : 'answered',
  standing,
  place: 'sample',
  amendable: standing === 'kept',
  photos: [],
});
const TICKET = [
  line(1, 'event', 'Call opened', 'No cool, two-storey house at the corner <script>alert(1)</script>'),
  line(2, 'kept', 'What kind of unit is it?', 'PSC with a run capacitor of two or three terminals'),
  line(3, 'fallen', 'Prove the meter, prove it dead, prove the meter again.', 'Known source, before: 121\u2009V'),
  line(4, 'set-aside', 'Count the tabs on each terminal, clockwise from the one you choose.', 'First terminal: 4'),
  line(5, 'kept', 'What does the unit do?', 'Compressor runs, fan still'),
];

export const viewOf = (name: string, last?: number): JobView | null => {
  const prompt = PROMPTS[name];
  if (!prompt) return null;
  return {
    job: name,
    title: 'No cool, two-storey house',
    training: name === 'note',
    prompt: { ...prompt, job: name, last: last ?? prompt.last },
    ticket: TICKET,
    people: Object.fromEntries(CREW.map(({ id, name, initials }) => [id, { name, initials }])),
    question: prompt.question === null ? null : 'Which colour was on C?',
    summary:
      prompt.kind === 'finished' || prompt.kind === 'signed'
        ? { customer: ['Found: The run capacitor is good.'], shop: ['Crew: Ines Vale.', 'Not signed.'] }
        : null,
    call: null,
    units: null,
    form: null,
    alarm: null,
    calling: false,
    opens: null,
    now: NOW,
  };
};

export function sampleDesk(): Desk {
  const look = async (_by: string, job: string): Promise<JobView> => {
    const view = job === CALL ? sampleCall(viewOf) : viewOf(job);
    if (!view) throw new NotFound('There is no such job.');
    return view;
  };
  return {
    look,
    sees: async () => true,
    crewView: (job) => look('', job),
    people: async () => CREW,
    person: async (id) => CREW.find((each) => each.id === id) ?? null,
    open: () => Promise.reject(new NotFound('Nothing is opened here.')),
    reply: async (by, job) => ({ view: await look(by, job), entries: [], refusal: null, info: null, again: null }),
    trucks: async () => [],
    jobs: async () =>
      (['under-way', 'held', 'paused', 'emergency', 'finished', 'signed', 'unreadable'] as const).map((state, i) => ({
        job: Object.keys(PROMPTS)[i] ?? '',
        title: 'No cool, two-storey house',
        state,
        where: 'Prove the meter, prove it dead, prove the meter again.',
        assigned: ['jo'],
        verdict: i > 3 ? 'The repair is proven' : null,
        updated: NOW,
        isolation: 'Outdoor unit: ENERGIZED OR NOT PROVED',
        until: null,
        training: i === 1,
        opened: '2026-07-14T14:00:00.000Z',
        begun: true,
        urgency: null,
        certified: false,
        causes: [],
        load: [],
        alarm: null,
      })),
    review: sampleReview(look),
    shop: sampleShop,
    dispatch: {
      take: () => Promise.reject(new NotFound('Nothing is taken here.')),
      known: async () => ({ calls: [], units: [] }),
      pick: () => Promise.reject(new NotFound('Nothing is picked here.')),
      board: async () => sampleBoard(),
      find: async () => [],
      assign: () => Promise.reject(new NotFound('Nothing is assigned here.')),
      alarms: async () => [],
      watch: async () => () => undefined,
    },
    reports: sampleReports(),
    watch: async () => () => undefined,
    exportJob: () => Promise.reject(new NotFound('Nothing is exported here.')),
    savePhoto: async () => null,
    photo: () => Promise.reject(new NotFound('No photo is kept here.')),
    settings: async () => ({ hertz: '60', rule: 'doubt', emergencyNumber: '911', tagWithExtraMeasure: false }),
  };
}

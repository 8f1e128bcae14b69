/** A finished call for the shop: every verdict with what it rests on, and everything that went otherwise than straight on. */
import { givenAt } from '../facts.ts';
import { fingerprint } from '../fingerprint.ts';
import { folderOf } from '../flatten.ts';
import type { Entry, Finding, TextRef } from '../schema.ts';
import { answerWords, NOTED, RAISED, VOIDED } from '../words.ts';
import { askedAt, type Closed, type Drawn, sentence } from './closed.ts';

type Of<K extends Entry['kind']> = Entry & { kind: K };
const of = <K extends Entry['kind']>(entries: readonly Entry[], kind: K): Of<K>[] =>
  entries.filter((e): e is Of<K> => e.kind === kind);

/** A part of the shop's record: its heading, and lines with findings among them. */
export interface ShopPart {
  readonly title: string;
  readonly says: readonly (string | Finding)[];
  /** The verdict that it is about. */
  readonly of?: Drawn;
}

export const shopLines = (job: Closed): string[] =>
  shopSays(job).flatMap(({ says }) => says.map((said) => (typeof said === 'string' ? said : finding(said))));

/** The same as `shopLines`, in its parts and with the findings apart. A part without a line is left out. */
export function shopSays(job: Closed): ShopPart[] {
  const parts: ShopPart[] = [
    { title: 'Call', says: head(job) },
    { title: 'Lock', says: locks(job) },
    ...job.verdicts.map((v) => ({ title: `Verdict: ${v.body.title}`, says: verdict(job, v), of: v })),
    { title: 'What went otherwise', says: [...setAside(job), ...leftOut(job), ...tries(job), ...events(job)] },
    { title: 'Causes and parts', says: [...causes(job), ...stock(job)] },
    {
      title: 'Signature',
      says: [job.signed ? `Signed by ${job.name(job.signed.by)}, ${job.when.moment(job.signed.at)}.` : 'Not signed.'],
    },
  ];
  return parts.filter(({ says }) => says.length > 0);
}

function head(job: Closed): string[] {
  const [first, last] = [job.entries[0], job.entries.at(-1)];
  const { manual, memory } = job;
  return [
    `Call: ${memory.title === null ? 'no title' : job.resolve(memory.title)}. Ended: ${sentence(job.ending.title)}${job.proven ? '' : ' Not proven.'}`,
    `Pages: ${manual.id} ${manual.version}, fingerprint ${fingerprint(manual).slice(0, 12)}.`,
    ...(memory.training ? ['Training call: never counts.'] : []),
    ...(first && last
      ? [
          `Opened ${job.when.moment(first.at)} by ${job.name(first.by)}; last entry #${last.seq}, ${job.when.moment(last.at)}.`,
        ]
      : []),
    `Crew: ${memory.assigned.map(job.name).join(', ') || 'nobody assigned'}.`,
  ];
}

/** Who answered the gates of make-dead, as long as nobody else did and nothing ended the isolation. */
function locks(job: Closed): string[] {
  const spans: { cabinet: string; by: string; first: Entry; last: Entry }[] = [];
  let broken = false;
  for (const e of job.entries) {
    if (e.kind === 'voided' || e.kind === 'handed-over' || e.kind === 'alarmed') broken = true;
    const place = e.kind === 'answered' ? job.place(e.body.place) : undefined;
    if (!place?.gate) continue;
    const now = spans.at(-1);
    if (now && !broken && now.by === e.by && now.cabinet === place.cabinet) now.last = e;
    else spans.push({ cabinet: place.cabinet, by: e.by, first: e, last: e });
    broken = false;
  }
  if (spans.length === 0) return ['Lock: none was put on.'];
  return spans.map(
    ({ cabinet, by, first, last }) =>
      `Lock, ${job.manual.cabinets[cabinet] ?? cabinet}: ${job.name(by)}, gates #${first.seq} to #${last.seq}, ${job.when.moment(first.at)} to ${job.when.moment(last.at)}.`,
  );
}

function verdict(job: Closed, { seq, body }: Drawn): (string | Finding)[] {
  const confirms = { junior: '', senior: ' A senior confirms it.', certified: ' A certified person decides it.' };
  const at = job.entries.find((e) => e.seq === seq)?.at;
  return [
    `Verdict #${seq}${at === undefined ? '' : `, ${job.when.moment(at)}`}: ${sentence(body.title)} (${body.verdict})${confirms[body.who]}`,
    ...body.findings,
    ...body.evidence.flatMap((s) => {
      const e = job.entries.find((x) => x.seq === s);
      return e ? [`Rests on ${answer(job, e)}`] : [];
    }),
  ];
}

const finding = (f: Finding): string =>
  [
    `${f.name}: ${f.reading}`,
    f.limits === null ? 'no limits' : `limits ${f.limits}`,
    ...(f.doubt === null ? [] : [`doubt ${f.doubt}`]),
    `${f.word}. ${f.text}`,
  ].join('; ') + (f.source === null ? '' : ` Source: ${f.source}.`);

/** One answer or other entry as evidence: its number, time, person, question and words. */
function answer(job: Closed, e: Entry): string {
  const who = `#${e.seq}, ${job.when.moment(e.at)}, ${job.name(e.by)}`;
  const first = e.kind === 'amended' ? job.entries.find((x) => x.seq === e.body.of) : e;
  const step = first?.kind === 'answered' ? askedAt(job, first.body.place) : null;
  if ((e.kind !== 'answered' && e.kind !== 'amended') || !step)
    return `${who}: ${e.kind === 'set' ? `what is known of the ${e.body.what === 'equipment' ? 'unit' : e.body.what}` : e.kind}.`;
  const changed = e.kind === 'amended' ? `, changed from #${e.body.of}` : '';
  const offline = e.kind === 'answered' && e.body.offline ? ' Answered without contact.' : '';
  const words = answerWords(step, e.body.parts, job.resolve, job.units).join('; ');
  return `${who}${changed}: ${step.say} ${sentence(words === '' ? 'no answer' : words)}${offline}`;
}

/** Verdicts on the record that no longer stand. */
function setAside(job: Closed): string[] {
  const standing = new Set(job.verdicts.map((v) => v.seq));
  return of(job.entries, 'concluded').flatMap((e) =>
    standing.has(e.seq)
      ? []
      : [`Set aside: verdict #${e.seq}, ${e.body.title} (${e.body.verdict}). Its answers changed or fell.`],
  );
}

/** Steps that were skipped with a reason, and steps that couldn't be done. */
function leftOut(job: Closed): string[] {
  return of(job.entries, 'answered').flatMap((e) => {
    const step = askedAt(job, e.body.place);
    if (!step) return [];
    const who = `#${e.seq}, ${job.name(e.by)}`;
    if (e.body.skipped) return [`Skipped ${who}: ${step.say} Reason: ${sentence(job.resolve(e.body.skipped))}`];
    const cant = Object.values(e.body.parts).some((v) => v.kind === 'choice' && v.chosen.includes('cant'));
    return cant
      ? [
          `Not possible ${who}: ${step.say} ${sentence(answerWords(step, e.body.parts, job.resolve, job.units).join('; '))}`,
        ]
      : [];
  });
}

/** Lines of make-dead that were not accepted, and answers of a second or later try or round. */
function tries(job: Closed): string[] {
  const refused = job.memory.failed.flatMap(({ cabinet, exit, seq }) => {
    const e = job.entries.find((x) => x.seq === seq);
    const why = (job.manual.isolations?.[cabinet] ?? job.manual.isolation).leaving[exit]?.notice ?? exit;
    return e ? [`Not accepted, ${job.manual.cabinets[cabinet] ?? cabinet}: ${answer(job, e)} ${why}`] : [];
  });
  const again = of(job.entries, 'answered').flatMap((e) => {
    const copy = /~(\d+)\/[^~]*$/.exec(e.body.place)?.[1];
    return copy !== undefined && copy !== '1' ? [`Try or round ${copy}: ${answer(job, e)}`] : [];
  });
  return [...refused, ...again];
}

const APPROVED = { 'lock-alternative': 'how the means is held open', tries: 'more lines' } as const;

function events(job: Closed): string[] {
  const text = (ref: TextRef | undefined): string => (ref === undefined ? '' : `: ${job.resolve(ref)}`);
  return job.entries.flatMap((e): string[] => {
    const said = (what: string): string[] => [
      sentence(`${what} (#${e.seq}, ${job.when.moment(e.at)}, ${job.name(e.by)})`),
    ];
    switch (e.kind) {
      case 'voided':
        return said(
          `Isolation ended at ${job.when.moment(e.body.since)}, ${VOIDED[e.body.reason]}${text(e.body.text)}`,
        );
      case 'amended':
        return said(`Changed #${e.body.of}${text(e.body.reason)}`);
      case 'withdrawn':
        return said(`Taken back #${e.body.of}${text(e.body.reason)}`);
      case 'paused':
        return e.body.safe ? said('Stopped and made safe') : [];
      case 'resumed':
        return said('Gone on');
      case 'handed-over':
        return said(`Handed over to ${job.name(e.body.to)}`);
      case 'raised':
        return said(`Raised to a senior, ${RAISED[e.body.why]}${text(e.body.text)}`);
      case 'alarmed':
        return said(`EMERGENCY, ${e.body.hazard}${text(e.body.text)}`);
      case 'released':
        return said(`Emergency ${e.body.as === 'clear' ? 'released' : 'heard of, not here'}${text(e.body.reason)}`);
      case 'asked':
        return said(`Asked${text(e.body.text)}`);
      case 'replied':
        return said(`Replied${text(e.body.text)}`);
      case 'approved':
        return said(`Approved, ${APPROVED[e.body.what]}${text(e.body.reason)}`);
      case 'sent-back':
        return said(`Sent back${text(e.body.reason)}`);
      case 'noted':
        return said(`${NOTED[e.body.as]}${text(e.body.text)}`);
      default:
        return [];
    }
  });
}

/** What was looked at on the page on which a part was fitted, before it went in. */
function causes(job: Closed): string[] {
  const pages = new Set(job.fitted.map(({ place }) => folderOf(place.id)));
  return job.passed.flatMap((place) => {
    const fact = job.memory.facts[place.id];
    if (!fact || place.class !== 'eyes' || !('parts' in place.step) || !pages.has(folderOf(place.id))) return [];
    return [
      sentence(
        `Why it failed, #${fact.seq}: ${answerWords(place.step, fact.body.parts, job.resolve, job.units).join('; ')}`,
      ),
    ];
  });
}

function stock(job: Closed): string[] {
  const used = of(job.entries, 'counted').map((e) => {
    const name = itemName(job.entries, e);
    return `Part used, #${e.seq}: ${name}${e.body.used === undefined ? '' : `, ${e.body.used} used`}, ${e.body.left} left on the truck.`;
  });
  const fitted = job.fitted.map((f) =>
    sentence(`Fitted, #${f.fact.seq}, ${job.when.moment(givenAt(f.fact))}, ${job.name(f.fact.by)}: ${f.words}`),
  );
  return [...fitted, ...used, ...(fitted.length > 0 && used.length === 0 ? ['No stock was counted.'] : [])];
}
/** The name of an item as the truck's list had it at that moment. */
function itemName(entries: readonly Entry[], e: Of<'counted'>): string {
  const truck = of(entries, 'set').findLast((x) => x.seq < e.seq && x.body.what === 'truck');
  const items = truck?.body.what === 'truck' ? truck.body.truck.items : [];
  return items.find((item) => item.id === e.body.item)?.name ?? e.body.item;
}

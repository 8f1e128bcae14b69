/** Reports of finished calls: who may read them, and links that open one of them to whoever has the link. */
import { memoryOf } from '../replay.ts';
import { type Closed, closed } from '../report/closed.ts';
import { sha256 } from '../report/digest.ts';
import { paperHtml } from '../report/paper/html.ts';
import { paperJson } from '../report/paper/json.ts';
import { type Audience, type Paper, paperOf } from '../report/paper/paper.ts';
import { paperPdf } from '../report/paper/pdf.ts';
import type { When } from '../report/when.ts';
import type { Units } from '../schema.ts';
import type { Share, Store } from '../store/port.ts';
import type { File } from './files.ts';
import { may } from './rights.ts';
import { takesPart } from './summary.ts';
import { NoRight, NotFound, type Person, type Report, type ReportDesk, type SharedLink } from './types.ts';

interface ReportParts {
  readonly store: Store;
  readonly load: (job: string) => Promise<File>;
  readonly personOf: (id: string) => Promise<Person>;
  readonly clock: () => Date;
  readonly random: (bytes: number) => string;
  readonly when: When;
}
/** Days that a link stays open at most (our setting). */
const LONGEST = 90;
const BITS = 32;
const DAY = 86_400_000;

export function createReports({ store, load, personOf, clock, random, when }: ReportParts): ReportDesk {
  const allowed = async (by: string, file: File, use: 'read' | 'share', audience: Audience): Promise<boolean> => {
    const { roles } = await personOf(by);
    const to = { own: false, holder: false, gate: false, reason: false, participates: takesPart(file).includes(by) };
    return may(roles, `${use}-${audience === 'customer' ? 'page' : 'record'}`, to);
  };
  const reportOf = async (file: File, audience: Audience): Promise<Report> => {
    const crew = new Map((await store.people()).map(({ id, name }) => [id, name]));
    const words = (ref: { ref: string }): string => file.texts.get(ref.ref) ?? '(removed)';
    // Whoever reads it may be nobody of the crew: it is in the units of the shop, as they were when the call began.
    const { units } = memoryOf(file.standing).settings;
    const inUnits = (of?: Units) => closed(file.standing, file.entries, words, (id) => crew.get(id) ?? id, when, of);
    const [job, shown] = [inUnits(), inUnits(units)];
    if (!job || !shown) throw new NotFound('The report is there once the call has ended.');
    return asReport(job, paperOf(shown, audience), store, clock);
  };

  return {
    async read(by, job, audience) {
      const file = await load(job);
      if (!(await allowed(by, file, 'read', audience))) throw new NoRight('This report is not yours to read.');
      return reportOf(file, audience);
    },

    async share(by, job, audience, days) {
      const file = await load(job);
      if (!(await allowed(by, file, 'share', audience))) throw new NoRight('This report is not yours to share.');
      await reportOf(file, audience);
      const [token, now] = [random(BITS), clock().getTime()];
      const until = now + Math.min(LONGEST, Math.max(1, Math.floor(days))) * DAY;
      const [made, expires] = [now, until].map((at) => new Date(at).toISOString()) as [string, string];
      // The hash opens nothing: whoever reads the database gets no link.
      const share: Share = { hash: sha256(token), job, audience, by, made, expires };
      await store.saveShare(share);
      return { token, link: linkOf(share) };
    },

    async shares(by, job) {
      const file = await load(job);
      const open = await store.shares(job, clock().toISOString());
      const mine = await Promise.all(open.map((share) => allowed(by, file, 'share', share.audience)));
      return open.filter((_, i) => mine[i]).map(linkOf);
    },

    async endShare(by, job, id) {
      const open = await store.shares(job, clock().toISOString());
      const share = open.find(({ hash }) => hash === id);
      if (!share) throw new NotFound('There is no such link on this call, or it is not open any more.');
      if (!(await allowed(by, await load(job), 'share', share.audience)))
        throw new NoRight('This link is not yours to take back.');
      await store.endShare(id);
    },

    async shared(token) {
      const share = await store.share(sha256(token), clock().toISOString());
      if (!share) return null;
      // A job that was sent back is under way again: there is nothing to show until it has ended.
      return reportOf(await load(share.job), share.audience).catch((error: unknown) => {
        if (error instanceof NotFound) return null;
        throw error;
      });
    },
  };
}

const linkOf = ({ hash, audience, by, made, expires }: Share): SharedLink => ({
  id: hash,
  audience,
  by,
  made,
  expires,
});

function asReport(job: Closed, paper: Paper, store: Store, clock: () => Date): Report {
  const named = new Set(paper.blocks.flatMap((block) => (block.kind === 'photo' ? block.hash : [])));
  const photo = async (hash: string): Promise<Uint8Array | null> => (named.has(hash) ? store.photo(hash) : null);
  return {
    title: `${paper.title}: ${paper.about}`,
    html: (photoAt) => paperHtml(paper, photoAt),
    json: () => paperJson(job, paper),
    photo,
    async pdf(size) {
      const found = new Map<string, Uint8Array>();
      for (const hash of named) {
        const bytes = await photo(hash);
        if (bytes) found.set(hash, bytes);
      }
      return paperPdf(paper, size, found, clock());
    },
  };
}

/** Links that open one report. */
import type { Share } from '../port.ts';
import type { Shares } from '../sqlite/shares.ts';
import type { Link } from './link.ts';

type Row = [hash: string, job: string, audience: Share['audience'], by: string, made: string, expires: string];
const ROW = 'hash, job, audience, "by", made, expires';
const toShare = ([hash, job, audience, by, made, expires]: Row): Share => ({ hash, job, audience, by, made, expires });
const INSERT = `insert into share (${ROW}) values ($1, $2, $3, $4, $5, $6) on conflict do nothing`;
const fromShare = ({ hash, job, audience, by, made, expires }: Share): Row => [hash, job, audience, by, made, expires];

export function createShares(link: Link): Shares {
  return {
    async saveShare(share) {
      await link.again('put-share', INSERT, fromShare(share));
    },
    async share(hash, now) {
      const text = `select ${ROW} from share where hash = $1 and expires > $2`;
      const [row] = await link.read<Row>('share', text, [hash, now]);
      return row ? toShare(row) : null;
    },
    async shares(job, now) {
      const text = `select ${ROW} from share where job = $1 and expires > $2 order by made desc, hash`;
      return (await link.read<Row>('shares', text, [job, now])).map(toShare);
    },
    async endShare(hash) {
      await link.again('end-share', 'delete from share where hash = $1', [hash]);
    },
  };
}

export const putShares = (shares: readonly Share[]) =>
  shares.map((share) => ({ text: INSERT, values: fromShare(share) }));
export const everyShare = async (link: Link): Promise<Share[]> =>
  (await link.read<Row>('all-shares', `select ${ROW} from share order by hash`)).map(toShare);

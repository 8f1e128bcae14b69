/** What a senior looks at before a word that counts, with a link to the rest. */
import { look } from '../render/review.ts';
import { placesOf } from './parts.ts';
import { opensOnJob } from './window.ts';

export const openLook = opensOnJob('Review', async (parts, person, job) => {
  const review = await parts.desk.review.look(person, job);
  const [place, link] = await Promise.all([placesOf(parts, [job]), parts.webLink(person, `/review/${job}`)]);
  return look(review, link, place(job));
});

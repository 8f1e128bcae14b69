/** Words of danger: by kinds, and a corpus of sentences. */
import './danger/corpus.ts';
import './danger/hazard.ts';

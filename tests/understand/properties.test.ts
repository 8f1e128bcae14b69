/** What holds for all texts, tried on generated ones; in one file, so that their generator is loaded once. */
import './properties/any-text.ts';
import './properties/round-trip.ts';

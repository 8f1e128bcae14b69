/** What is typed at the questions of the real pages; in one file, so that the manual is compiled once. */
import './pages/choices.ts';
import './pages/gates.ts';
import './pages/worked-lines.ts';

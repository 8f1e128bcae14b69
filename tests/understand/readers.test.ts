/** What each reader makes of what is typed; in one file, because each file of tests is a start of its own. */
import './danger/corpus.ts';
import './danger/hazard.ts';
import './readers/answers.ts';
import './readers/command.ts';
import './readers/field.ts';
import './readers/label.ts';
import './readers/line.ts';
import './readers/lookalikes.ts';
import './readers/plate.ts';
import './readers/temperature-and-pressure.ts';

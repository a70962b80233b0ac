import { upright } from '../measured/changes';
import { holdChanges } from '../measured/hold-changes';

holdChanges(upright.filter((_, at) => at % 2 === 1));

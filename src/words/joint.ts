/** Sentences beside a joint at the stand: fetched with the stand, not before the first screen. */

export { jointLabels as jointWords } from './en/joint-labels';

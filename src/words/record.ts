/** Sentences about the entries of a record: fetched with the record, not before the first screen. */

export { loggedSentence } from './en/logged';

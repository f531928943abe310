/** What was typed may end in a full stop; the sentence round it has its own. */
export function withoutStop(text: string): string {
  return text.trim().replace(/\.$/, '');
}

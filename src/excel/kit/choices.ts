/** A list that is written out in a drop-down's rule takes no more characters than this. */
const LIST_LENGTH = 255;
/** Words for a drop-down, in order, as far as the list reaches. */
export function fittingChoices(words: readonly string[]): readonly string[] {
  const choices: string[] = [];
  for (const word of words) if ([...choices, word].join(",").length <= LIST_LENGTH) choices.push(word);
  return choices;
}

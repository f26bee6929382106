/** What others see of somebody who signs in for the first time. */

const LONGEST = 80;
/** Controls and halves of surrogate pairs, and marks that turn the direction of what stands after them. */
const NOT_SHOWN = /[\p{Cc}\p{Cs}\p{Bidi_Control}]/gu;

/**
 * The token's `name` claim (OpenID Connect Core 1.0, section 5.1) where it says anything, else its subject: of one line, without
 * characters that do not show, at most 80 characters.
 */
export function nameAtFirstSight(name: string | null, subject: string): string {
  for (const text of [name ?? "", subject]) {
    const shown = cut(text.replace(/\s+/gu, " ").replace(NOT_SHOWN, "").trim());
    if (shown !== "") return shown;
  }
  return "Carer";
}

/** Cut between characters, never inside one. */
function cut(text: string): string {
  let kept = "";
  for (const character of text) {
    if (kept.length + character.length > LONGEST) break;
    kept += character;
  }
  return kept.trimEnd();
}

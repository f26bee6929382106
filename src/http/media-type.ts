/** The two media types of GraphQL over HTTP (Stage 2 draft), "Media Types", the preferred one first. */
export const RESPONSE_TYPES = ["application/graphql-response+json", "application/json"] as const;
export type ResponseType = (typeof RESPONSE_TYPES)[number];

/**
 * The answer's media type for an `Accept` header (RFC 9110, 12.5.1): the highest weight wins, then the more exact range,
 * then our preference. No header means the preferred type ("Legacy watershed"). Null: nothing we can write is accepted.
 */
export function chooseResponseType(accept: string | undefined): ResponseType | null {
  if (accept === undefined || accept.trim() === "") return RESPONSE_TYPES[0];
  const ranges = accept.split(",").map(readRange);
  let chosen: { type: ResponseType; weight: number; order: number } | null = null;
  for (const type of RESPONSE_TYPES) {
    const fits = ranges.filter(({ range }) => range === type || range === "application/*" || range === "*/*");
    const [best] = fits.sort((a, b) => exactness(b.range) - exactness(a.range));
    if (best === undefined || best.weight === 0) continue;
    // A list without weights names its first choice first, so place in the list breaks a tie.
    const order = ranges.indexOf(best);
    if (chosen === null || best.weight > chosen.weight || (best.weight === chosen.weight && order < chosen.order))
      chosen = { type, weight: best.weight, order };
  }
  return chosen?.type ?? null;
}

function readRange(text: string): { range: string; weight: number } {
  const [range = "", ...parameters] = text.split(";").map((part) => part.trim().toLowerCase());
  const charset = parameters.find((parameter) => parameter.startsWith("charset="));
  const weight = Number(parameters.find((parameter) => parameter.startsWith("q="))?.slice(2) ?? 1);
  const ours = charset === undefined || isUtf8(charset);
  return { range, weight: ours && weight >= 0 && weight <= 1 ? weight : 0 };
}

const exactness = (range: string): number => (range === "*/*" ? 0 : range.endsWith("/*") ? 1 : 2);

/** Whether a `Content-Type` says JSON in UTF-8, which is also assumed when no encoding is named ("Media Types"). */
export function isJson(contentType: string | undefined): boolean {
  const [essence, ...parameters] = (contentType ?? "").split(";").map((part) => part.trim().toLowerCase());
  const charset = parameters.find((parameter) => parameter.startsWith("charset="));
  return essence === "application/json" && (charset === undefined || isUtf8(charset));
}

const isUtf8 = (parameter: string): boolean => /^charset="?utf-?8"?$/.test(parameter);

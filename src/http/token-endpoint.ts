import type { IncomingMessage, ServerResponse } from "node:http";
import { z } from "zod";
import { answerJson } from "./answer.js";
import { readJsonBody } from "./body.js";
import type { DevIssuer } from "./dev-issuer.js";

const request = z.object({ person: z.string() });

/** `POST /dev/token {"person": "<subject>"}`: a token for a demo person. */
export async function answerToken(req: IncomingMessage, res: ServerResponse, issuer: DevIssuer): Promise<void> {
  if (req.method !== "POST") return answerJson(res, 405, { message: "Use POST." }, { allow: "POST" });
  const body = await readJsonBody(req);
  const asked = request.safeParse(body.ok ? body.value : null);
  const token = asked.success ? await issuer.issueToken(asked.data.person) : null;
  if (token?.ok) return answerJson(res, 200, token.value);
  const people = issuer.people.map(({ subject, name, about }) => ({ person: subject, name, about }));
  answerJson(res, 400, {
    message: 'Send JSON such as {"person": "..."} naming one of the people listed here.',
    people,
  });
}

import type { DemoPerson } from "./dev-issuer.js";

/** A thin strip above the explorer where a demo person signs in with one click. Empty without demo people. */
export function signInStrip(people: readonly DemoPerson[]): string {
  const choices = people.map(
    ({ subject, name, about }) => `<option value="${text(subject)}">${text(name)}, ${text(about)}</option>`,
  );
  const strip =
    people.length === 0
      ? ""
      : `<form id="sign-in"><label for="person">Sign in as</label> <select id="person">${choices.join("")}</select>
         <button>Sign in</button> <span id="signed-in" role="status">Not signed in.</span></form>`;
  return `${STYLE}${strip}`;
}

const STYLE = `<style>
  body { display: flex; flex-direction: column; height: 100vh; margin: 0; }
  #root { flex: 1; min-height: 0; height: auto; }
  #sign-in { display: flex; gap: 0.6em; align-items: center; margin: 0; padding: 0.4em 0.8em;
    font: 15px/1.4 system-ui, sans-serif; background: #f5efe0; color: #2b2417; }
  #sign-in select, #sign-in button { font: inherit; padding: 0.1em 0.5em; }
</style>`;

/**
 * Runs in the page before the explorer. Adds the token to every request that has none in its headers pane, and hands the
 * same one to subscriptions. The token is kept for this tab only.
 */
export const SIGN_IN_SCRIPT = `
(() => {
  let token = sessionStorage.getItem("noonpail.authorization");
  let last = token;
  window.noonpailAuthorization = () => last;
  const plainFetch = window.fetch.bind(window);
  window.fetch = (input, init = {}) => {
    const headers = new Headers(init.headers);
    const own = headers.get("authorization");
    last = own || token;
    if (last && !own) headers.set("authorization", last);
    return plainFetch(input, { ...init, headers });
  };
  const form = document.getElementById("sign-in");
  if (!form) return;
  const person = document.getElementById("person");
  const status = document.getElementById("signed-in");
  const remembered = sessionStorage.getItem("noonpail.person");
  if (token && remembered) {
    person.value = remembered;
    status.textContent = "Signed in.";
  }
  form.addEventListener("submit", async (event) => {
    event.preventDefault();
    const answer = await plainFetch("/dev/token", {
      method: "POST",
      headers: { "content-type": "application/json" },
      body: JSON.stringify({ person: person.value }),
    });
    const body = await answer.json();
    if (!answer.ok) { status.textContent = body.message; return; }
    token = last = "Bearer " + body.access_token;
    sessionStorage.setItem("noonpail.authorization", token);
    sessionStorage.setItem("noonpail.person", person.value);
    status.textContent = "Signed in for eight hours. Run a query.";
  });
})();
`;

const text = (raw: string): string =>
  raw.replace(/[&<>"]/g, (sign) => ({ "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;" })[sign] ?? sign);

export default async function tearDown() {
  await globalThis.noonpailTestServer?.stop();
}

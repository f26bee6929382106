/** Rate limits that let everybody through, where something else is tested. */
import type { RateLimits } from "../../src/app/rate-limits.js";

export const noRates: RateLimits = { take: () => Promise.resolve({ ok: true, value: null }) };

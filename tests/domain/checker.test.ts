import { checkWeek } from "../../src/domain/checker/check-week.js";
import { tinyBrief, tinyDraft } from "../support/tiny-week.js";
it("finds nothing wrong with a week that is right", () => {
  expect(checkWeek(tinyBrief, tinyDraft)).toEqual([]);
});

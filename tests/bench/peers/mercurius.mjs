/** The week by mercurius: the hand-written server's statement behind a schema of the same shape. */
import Fastify from "fastify";
import mercurius from "mercurius";
import { createSignIn, settings } from "./sign-in.mjs";
import { readWeek, signIn } from "./week-statement.mjs";

const schema = `
  type Query { week(householdId: ID!, date: String!): Week }
  type Week { id: ID! weekStart: String! revision: Int! plan: Plan! }
  type Plan {
    id: ID! number: Int! state: String! createdAt: String! wishes: Wishes!
    boxes: [Box!]! batches: [Batch!]! tasks: [Task!]! shopping: [Line!]!
  }
  type Wishes { handsOnMinutes: Float! costMinor: Int! spareBaseGrams: Int! }
  type Child { id: ID! name: String! }
  type Named { key: String! name: String! }
  type Person { displayName: String! }
  type Box { id: ID! date: String! state: String! child: Child! packing: Packing items: [Item!]! }
  type Packing { leaveAt: String! coldSources: Int! flask: Boolean! cutlery: [String!]! }
  type Item {
    id: ID! breakKey: String! slot: String! place: Int! dish: Named! grams: Float! pieces: Float served: String!
    energyKcal: Float! carbohydrateGrams: Float allergens: [String!]! cuts: [Cut!]! holdingCase: String! pinned: Boolean! note: Note
  }
  type Cut { food: String! cut: String! source: String! }
  type Note { compartment: Int! holdingMinutes: Int! holdingLimitMinutes: Int! }
  type Batch { id: ID! base: Named! session: String! batches: Int! grams: Int! spareGrams: Int! state: String! }
  type Task {
    id: ID! session: String! kind: String! text: String! forDates: [String!]! children: [Child!]! handsOnMinutes: Float!
    passiveMinutes: Float! startsAt: String! handsFreeAt: String! endsAt: String! carer: Int! handles: [String!]! state: String! takenBy: Person
  }
  type Line {
    id: ID! food: Named! section: String! neededGrams: Int! fromStockGrams: Int! packs: Int! packGrams: Int! spareGrams: Int!
    costMinor: Int! readLabel: Boolean!
  }
`;

const personOf = createSignIn(signIn);
const app = Fastify();
app.register(mercurius, {
  schema,
  resolvers: {
    Query: {
      week: async (_, { householdId, date }, { personId }) => JSON.parse(await readWeek(personId, householdId, date)),
    },
  },
  context: async (request) => ({ personId: await personOf(request.headers.authorization) }),
  jit: settings.jit ?? 0,
});
await app.listen({ port: 0, host: "127.0.0.1" });
process.send({ port: app.server.address().port });

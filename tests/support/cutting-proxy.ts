/** A wire between a client and a server that can be cut: at once, or when the next answer is about to come back. */
import { createServer, connect, type AddressInfo, type Socket } from "node:net";

export interface Wire {
  /** What stands in for the server's address. */
  readonly url: string;
  /** Requests that reached the server, by HTTP over this wire. */
  readonly requests: readonly string[];
  /** The next so many answers get lost: the server has done its work, and the connection breaks before a byte of it arrives. */
  loseAnswers(count: number): void;
  /** Breaks every connection there is. */
  cut(): void;
  /** While it is down, nothing is connected. */
  down(isDown: boolean): void;
  close(): Promise<void>;
}

export async function startWire(target: string): Promise<Wire> {
  const { hostname, port } = new URL(target);
  const open = new Set<Socket>();
  const requests: string[] = [];
  let toLose = 0;
  let isDown = false;
  const cut = () => open.forEach((socket) => socket.destroy());
  const server = createServer((near) => {
    if (isDown) return near.destroy();
    const far = connect(Number(port), hostname);
    for (const socket of [near, far]) {
      open.add(socket);
      socket.on("close", () => open.delete(socket)).on("error", () => undefined);
    }
    near.on("data", (bytes) => {
      const text = bytes.toString("latin1");
      if (text.startsWith("POST ")) requests.push(text);
      far.write(bytes);
    });
    far.on("data", (bytes) => {
      if (toLose > 0 && bytes.toString("latin1", 0, 5) === "HTTP/") {
        toLose--;
        near.destroy();
        return;
      }
      near.write(bytes);
    });
    near.on("close", () => far.destroy());
    far.on("close", () => near.destroy());
  });
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
  return {
    url: `http://127.0.0.1:${(server.address() as AddressInfo).port}`,
    requests,
    loseAnswers: (count) => void (toLose = count),
    cut,
    down(state) {
      isDown = state;
      if (isDown) cut();
    },
    close() {
      cut();
      return new Promise((resolve) => server.close(() => resolve()));
    },
  };
}

import type { IncomingMessage } from "node:http";
import { BlockList, isIP } from "node:net";

/** Tells whom a request comes from, as far as it can be believed. */
export type AddressOf = (req: IncomingMessage) => string;

/**
 * `X-Forwarded-For` is written by whoever likes to. It is read from its end, where the proxy nearest to us wrote, and only as
 * long as the one who wrote is trusted; with no trusted proxy it is not read at all.
 * @param trusted addresses and networks
 * @returns an IPv4 address, or the /64 network of an IPv6 one: whoever has one address there has all of them (RFC 6177)
 */
export function createAddressOf(trusted: readonly string[]): AddressOf {
  const proxies = new BlockList();
  for (const network of trusted) {
    const [address = "", prefix] = network.split("/");
    const family = isIP(address) === 6 ? "ipv6" : "ipv4";
    if (prefix === undefined) proxies.addAddress(address, family);
    else proxies.addSubnet(address, Number(prefix), family);
  }
  const isTrusted = (address: string) =>
    isIP(address) !== 0 && proxies.check(address, isIP(address) === 6 ? "ipv6" : "ipv4");
  return (req) => {
    let nearest = plain(req.socket.remoteAddress ?? "");
    const told = [req.headers["x-forwarded-for"] ?? []].flat().join(",").split(",");
    while (isTrusted(nearest)) {
      const before = plain(told.pop()?.trim() ?? "");
      if (isIP(before) === 0) break;
      nearest = before;
    }
    return isIP(nearest) === 6 ? networkOf(nearest) : nearest;
  };
}

/** An IPv4 address is one, however the socket spells it (RFC 4291, 2.5.5.2). */
const plain = (address: string): string => address.replace(/^::ffff:(?=\d+\.)/i, "");

/** The first four groups. */
function networkOf(address: string): string {
  const [front = "", back = ""] = address.split("%", 1)[0]!.split("::");
  const groups = (part: string) => (part === "" ? [] : part.split(":"));
  const zeros = Array<string>(Math.max(0, 8 - groups(front).length - groups(back).length)).fill("0");
  const all = address.includes("::") ? [...groups(front), ...zeros, ...groups(back)] : groups(front);
  return `${all
    .slice(0, 4)
    .map((group) => Number.parseInt(group, 16).toString(16))
    .join(":")}::/64`;
}

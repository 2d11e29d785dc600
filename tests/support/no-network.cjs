/** Loaded before the program: whatever reaches for a network is written down, and gets none. */
const { appendFileSync } = require('node:fs');

const refuse = (what) =>
  function refused() {
    appendFileSync(process.env.REACHED, `${what}\n`);
    throw new Error(`Nothing here may reach for a network: ${what}`);
  };

require('node:net').Socket.prototype.connect = refuse('net');
require('node:dgram').createSocket = refuse('dgram');
const dns = require('node:dns');
for (const name of Object.keys(dns)) if (/^(?:lookup|resolve)/.test(name)) dns[name] = refuse(`dns.${name}`);
globalThis.fetch = refuse('fetch');

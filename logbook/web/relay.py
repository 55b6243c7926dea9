"""TLS for the server in the same process: takes phones in, decrypts, hands the bytes to the server on loopback.

The server behind buffers bodies without a thread each, but speaks no TLS; this relay does nothing else, so that
twenty phones stalled in the middle of an upload or a handshake keep nobody waiting. The phone's address would be
lost on the way; it is kept by the port the relay comes from, and `Relay.told` writes it back into the request.
"""

from __future__ import annotations

import asyncio
import contextlib
import ssl
import threading
from pathlib import Path

HANDSHAKE_SECONDS = 10
IDLE_SECONDS = 300  # a connection on which nothing moves either way for this long is let go
SETTLE_SECONDS, QUIET_SECONDS = 2.0, 0.2  # a stop waits until nothing moves any more, and no longer
A_BITE = 65536
MOST, MOST_OF_ONE = 600, 200  # connections open at once, and of one address: a whole crew behind one router, and no more


class Relay:
    """Listens on `host:port` with TLS and carries to `127.0.0.1:inner_port`. `start` returns once it listens."""

    def __init__(self, certificate: Path, key: Path, host: str, port: int, inner_port: int):
        self.host, self.port, self.inner_port = host, port, inner_port
        self._moved: set[_Moved] = set()  # of the connections that are open
        self.peers: dict[int, str] = {}  # port the relay comes from -> address of the phone
        self._tls = ssl.SSLContext(ssl.PROTOCOL_TLS_SERVER)
        self._tls.minimum_version = ssl.TLSVersion.TLSv1_2
        self._tls.load_cert_chain(certificate, key)
        self._tls.set_alpn_protocols(["http/1.1"])
        self._loop = asyncio.new_event_loop()
        self._thread = threading.Thread(target=self._loop.run_forever, name="tls-relay", daemon=True)

    def start(self) -> Relay:
        """Raises OSError where the port cannot be had."""
        self._thread.start()
        listening = asyncio.run_coroutine_threadsafe(
            asyncio.start_server(
                self._carry, self.host, self.port, ssl=self._tls, ssl_handshake_timeout=HANDSHAKE_SECONDS, backlog=512
            ),
            self._loop,
        )
        try:
            self._server = listening.result()
        except BaseException:
            self._end_loop()
            raise
        self.port = self._server.sockets[0].getsockname()[1]
        return self

    def stop(self) -> None:
        """Takes nobody in any more; answers that the server has given already are still carried to their phones."""
        with contextlib.suppress(TimeoutError):
            asyncio.run_coroutine_threadsafe(self._settle(), self._loop).result(2 * SETTLE_SECONDS)
        self._end_loop()

    async def _settle(self) -> None:
        self._server.close()
        now = asyncio.get_running_loop().time
        end = now() + SETTLE_SECONDS
        await asyncio.sleep(QUIET_SECONDS)
        while now() < end and any(now() - one.at < QUIET_SECONDS for one in self._moved):
            await asyncio.sleep(QUIET_SECONDS / 4)

    def _end_loop(self) -> None:
        self._loop.call_soon_threadsafe(self._loop.stop)
        self._thread.join()

    def told(self, app):
        """The application with `REMOTE_ADDR` set to the phone's own address and the scheme to https."""

        def with_peer(environ, start_response):
            peer = self.peers.get(int(environ.get("REMOTE_PORT") or 0))
            if peer is not None:
                environ["REMOTE_ADDR"] = peer
                environ["wsgi.url_scheme"] = "https"
            return app(environ, start_response)

        return with_peer

    async def _carry(self, reader: asyncio.StreamReader, writer: asyncio.StreamWriter) -> None:
        peer = (writer.get_extra_info("peername") or ("",))[0]
        open_now = list(self.peers.values())
        if len(open_now) >= MOST or open_now.count(peer) >= MOST_OF_ONE:
            writer.close()
            return
        try:
            inner_reader, inner_writer = await asyncio.open_connection("127.0.0.1", self.inner_port)
        except OSError:
            writer.close()
            return
        port = inner_writer.get_extra_info("sockname")[1]
        self.peers[port] = peer
        moved = _Moved()
        self._moved.add(moved)
        up = asyncio.create_task(_pump(reader, inner_writer, moved))
        down = asyncio.create_task(_pump(inner_reader, writer, moved))
        try:
            await down  # the server closes when it has answered, or when the phone went away
        finally:
            up.cancel()
            del self.peers[port]
            self._moved.discard(moved)
            for each in (inner_writer, writer):
                with contextlib.suppress(OSError, ssl.SSLError, RuntimeError):
                    each.close()


class _Moved:
    """When something last moved on a connection, either way: a long download is no idle phone."""

    def __init__(self) -> None:
        self.at = asyncio.get_running_loop().time()

    def now(self) -> None:
        self.at = asyncio.get_running_loop().time()

    def left(self) -> float:
        return self.at + IDLE_SECONDS - asyncio.get_running_loop().time()


async def _pump(reader: asyncio.StreamReader, writer: asyncio.StreamWriter, moved: _Moved) -> None:
    """Carries one way until that side ends or the whole connection stalls; a half-closed side is passed on where it can be."""
    with contextlib.suppress(OSError, ssl.SSLError, asyncio.IncompleteReadError):
        while bite := await _bite(reader, moved):
            writer.write(bite)
            await asyncio.wait_for(writer.drain(), IDLE_SECONDS)
            moved.now()
        if writer.can_write_eof():
            writer.write_eof()


async def _bite(reader: asyncio.StreamReader, moved: _Moved) -> bytes:
    """What comes next, b"" at the end. TimeoutError: nothing moved either way for too long."""
    while True:
        try:
            return await asyncio.wait_for(reader.read(A_BITE), max(moved.left(), 0.01))
        except TimeoutError:
            if moved.left() <= 0:
                raise

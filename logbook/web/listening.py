"""The HTTP server as this project runs it: its bars, and the headers on the answers it gives by itself.

A request that is no HTTP, a head that is too long or a body that is too large never reaches the application; the
server refuses it, and that answer carries the same headers as every other. Bars are common practice, no published
source: what 50 phones need, with room, and no more.
"""

from __future__ import annotations

from contextlib import suppress

from waitress.channel import HTTPChannel
from waitress.server import MultiSocketServer, create_server
from waitress.task import ErrorTask

from logbook.web import secrecy

HEAD_BYTES = 32_768  # request line and headers
CONNECTIONS = 1000  # open at once, stalled ones too
SILENT_SECONDS = 120  # a connection on which nothing moves for this long is let go
FILES = 4096  # handles of this process: three for each phone behind the relay
THREADS = 8
A_BITE = 65_536  # bytes taken from a connection at a time: a recording of megabytes comes in fewer turns


class _Refusal(ErrorTask):
    """What the server answers by itself."""

    def execute(self) -> None:
        status, headers, body = self.request.error.to_response("logbook")
        self.status = status
        own = {**secrecy.HEADERS, "Content-Security-Policy": secrecy.POLICY, "Cache-Control": "no-store"}
        self.response_headers.extend([*headers, *own.items()])
        self.set_close_on_finish()
        self.content_length = len(body)
        self.write(body)


class _Channel(HTTPChannel):
    error_task_class = _Refusal


def listen(app, host: str, port: int, upload_limit: int, *, behind_proxy: bool = False):
    """A server that listens; `run()` serves until it is closed. OSError: the port cannot be had.

    `behind_proxy`: a proxy on this machine adds the phone's address as `X-Forwarded-For`, and it alone is believed;
    without it, and from anybody else, such a header is taken out before the application sees the request.
    """
    more_files()
    proxy = {"trusted_proxy": "127.0.0.1", "trusted_proxy_headers": "x-forwarded-for"} if behind_proxy else {}
    server = create_server(
        app, host=host, port=port, threads=THREADS, ident=None, max_request_header_size=HEAD_BYTES,
        max_request_body_size=upload_limit + 1_000_000,  # the application tells who is over its own bar in words
        connection_limit=CONNECTIONS, recv_bytes=A_BITE, asyncore_use_poll=True, channel_timeout=SILENT_SECONDS, cleanup_interval=10,
        clear_untrusted_proxy_headers=True, **proxy,
    )  # fmt: skip
    for each in server.map.values() if isinstance(server, MultiSocketServer) else (server,):
        each.channel_class = _Channel
    return server


def more_files(wanted: int = FILES) -> None:
    """Allow this process more open handles, as far as the system lets it."""
    try:
        import resource
    except ImportError:
        return
    soft, hard = resource.getrlimit(resource.RLIMIT_NOFILE)
    most = wanted if hard == resource.RLIM_INFINITY else min(wanted, hard)
    if soft != resource.RLIM_INFINITY and soft < most:
        with suppress(ValueError, OSError):
            resource.setrlimit(resource.RLIMIT_NOFILE, (most, hard))

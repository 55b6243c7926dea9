"""The TLS relay answers while phones stall in the middle of an upload and of the handshake."""

from __future__ import annotations

import http.client
import socket
import ssl
import threading

import pytest
from waitress.server import create_server

from logbook.web import authority
from logbook.web.relay import Relay


@pytest.fixture
def relay(tmp_path):
    """(relay, client context that trusts the authority alone); the application answers who asked and how much came."""
    peers = {}

    def app(environ, start_response):
        body = environ["wsgi.input"].read()
        start_response("200 OK", [("Content-Type", "text/plain")])
        return [f"{environ['REMOTE_ADDR']} {environ['wsgi.url_scheme']} {len(body)}".encode()]

    chain, key = authority.ensure(tmp_path / "state", ("localhost", "127.0.0.1"))
    server = create_server(lambda e, s: peers["app"](e, s), host="127.0.0.1", port=0, threads=4)
    relay = Relay(chain, key, "127.0.0.1", 0, server.effective_port)
    peers["app"] = relay.told(app)
    thread = threading.Thread(target=server.run, daemon=True)
    thread.start()
    relay.start()
    trust = ssl.create_default_context(cafile=str(authority.path(tmp_path / "state")))
    yield relay, trust
    relay.stop()
    server.close()


def ask(relay, trust, method="GET", body=None):
    connection = http.client.HTTPSConnection("localhost", relay.port, context=trust, timeout=10)
    connection.request(method, "/", body)
    answer = connection.getresponse().read().decode()
    connection.close()
    return answer


def test_the_phones_address_and_https_reach_the_application(relay):
    assert ask(*relay) == "127.0.0.1 https 0"


def test_a_25_megabyte_body_arrives_whole(relay):
    assert ask(*relay, "POST", bytes(25_000_000)) == "127.0.0.1 https 25000000"


def test_it_answers_while_20_uploads_and_20_handshakes_stall(relay):
    box, trust = relay
    stalled = []
    for _ in range(20):
        bare = socket.create_connection(("127.0.0.1", box.port))
        phone = trust.wrap_socket(bare, server_hostname="localhost")
        phone.sendall(b"POST / HTTP/1.1\r\nHost: localhost\r\nContent-Length: 1000000\r\n\r\nhalf")
        stalled.append(phone)
    for _ in range(20):
        phone = socket.create_connection(("127.0.0.1", box.port))
        phone.sendall(b"\x16\x03\x01")  # a handshake that goes no further
        stalled.append(phone)
    assert ask(box, trust) == "127.0.0.1 https 0"
    for phone in stalled:
        phone.close()


def test_who_does_not_trust_the_authority_is_not_served(relay):
    with pytest.raises(ssl.SSLCertVerificationError):
        ask(relay[0], ssl.create_default_context())


def test_the_table_of_peers_does_not_grow(relay):
    for _ in range(50):
        ask(*relay)
    assert len(relay[0].peers) < 10, "a connection that ended is forgotten"

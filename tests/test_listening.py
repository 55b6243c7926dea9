"""The HTTP server as it is set up: whose address is believed, and what it says of itself."""

from __future__ import annotations

import http.client
import json
import threading

import pytest

from logbook.web.listening import listen


@pytest.fixture(params=[False, True], ids=["open", "behind a proxy"])
def server(request):
    def app(environ, start_response):
        start_response("200 OK", [("Content-Type", "application/json")])
        told = {name: value for name, value in environ.items() if "FORWARDED" in name or name in ("REMOTE_ADDR", "wsgi.url_scheme", "HTTP_HOST")}
        return [json.dumps(told).encode()]

    listening = listen(app, "127.0.0.1", 0, 10_000, behind_proxy=request.param)
    thread = threading.Thread(target=listening.run, daemon=True)
    thread.start()
    yield listening.effective_port, request.param
    listening.close()


def ask(port, **headers):
    connection = http.client.HTTPConnection("127.0.0.1", port, timeout=10)
    connection.request("GET", "/", None, {name.replace("_", "-"): value for name, value in headers.items()})
    answer = connection.getresponse()
    told = answer.status, answer.headers, answer.read()
    connection.close()
    return told


def test_the_phones_address_is_believed_from_a_proxy_alone(server):
    """Else whoever tries passwords could name another address for each try."""
    port, behind = server
    status, headers, body = ask(port, X_Forwarded_For="192.0.2.7", X_Forwarded_Proto="https", X_Forwarded_Host="elsewhere.example", Forwarded="for=192.0.2.8")
    told = json.loads(body)
    assert told["REMOTE_ADDR"] == ("192.0.2.7" if behind else "127.0.0.1")
    assert told["HTTP_HOST"] == f"127.0.0.1:{port}" and "elsewhere.example" not in body.decode()
    assert not {name for name in told if "FORWARDED" in name} - {"HTTP_X_FORWARDED_FOR"}
    assert "Server" not in headers or headers["Server"] == "", "it does not tell which program it is"


def test_a_chain_of_addresses_counts_from_the_proxy(server):
    """Of several the last was written by the proxy; those before it by anybody."""
    port, behind = server
    told = json.loads(ask(port, X_Forwarded_For="198.51.100.1, 192.0.2.7")[2])
    assert told["REMOTE_ADDR"] == ("192.0.2.7" if behind else "127.0.0.1")


def test_a_body_over_the_bar_is_refused_before_it_is_taken(server):
    connection = http.client.HTTPConnection("127.0.0.1", server[0], timeout=10)
    connection.putrequest("POST", "/")
    connection.putheader("Content-Length", "1100000")
    connection.endheaders()  # announced, and not a byte of it sent
    answer = connection.getresponse()
    assert answer.status == 413 and "default-src 'none'" in answer.headers["Content-Security-Policy"]
    connection.close()

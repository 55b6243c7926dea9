"""Starting a server: the name it is reached by, and a port that another program holds."""

import ipaddress
import socket

import pytest

from logbook.cli import main
from logbook.mistake import Mistake
from logbook.web.authority import may_vouch_for
from logbook.web.naming import addresses, name_of


def test_the_name_is_kept_because_phones_are_paired_with_it(tmp_path):
    assert name_of("box.local", "0.0.0.0", tmp_path / "state") == "box.local"
    assert name_of(None, "0.0.0.0", tmp_path / "state") == "box.local"
    assert name_of("other.local", "0.0.0.0", tmp_path / "state") == "other.local"


@pytest.mark.parametrize(("host", "name"), [("127.0.0.1", "localhost"), ("localhost", "localhost"), ("192.168.1.20", "192.168.1.20")])
def test_a_host_that_says_where_it_is_needs_no_name(tmp_path, host, name):
    assert name_of(None, host, tmp_path / "state") == name


@pytest.mark.parametrize("host", ["0.0.0.0", "::"])
def test_everywhere_is_no_address_that_a_phone_could_type(tmp_path, host):
    refused = name_of(None, host, tmp_path / "state")
    assert isinstance(refused, Mistake) and refused.key == "store.needs-name"
    assert not (tmp_path / "state").exists()


def test_only_addresses_inside_the_authoritys_constraints_go_into_its_certificate():
    assert all(may_vouch_for(ipaddress.ip_address(one)) for one in addresses())
    refused = ("192.0.2.2", "8.8.8.8", "2001:db8::1")  # RFC 5737 and 3849: set aside, and outside the private ranges
    assert not any(may_vouch_for(ipaddress.ip_address(one)) for one in refused)


def test_a_port_that_is_taken_is_told_in_two_sentences(tmp_path, capsys, monkeypatch):
    monkeypatch.setenv("XDG_STATE_HOME", str(tmp_path / "state"))
    with socket.create_server(("127.0.0.1", 0)) as other:
        port = str(other.getsockname()[1])
        for job, more in (("one", []), ("two", ["--tls"])):
            assert main(["serve", "--folder", str(tmp_path / job), "--port", port, *more]) == 2
            assert f"The port {port} of 127.0.0.1 cannot be had" in capsys.readouterr().err

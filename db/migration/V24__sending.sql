-- How big a piece is and what it weighs, unpacked: what its offer says and what its parcel is reckoned from. A size is kept as
-- she typed it, three lengths with a unit.
create table piece_size (
    piece_id uuid not null,
    size varchar(60) not null,
    weight_g numeric(30, 14),
    constraint piece_size_pk primary key (piece_id),
    constraint piece_size_piece_fk foreign key (piece_id) references piece (id) on delete cascade,
    constraint piece_size_weight_ck check (weight_g > 0)
);

-- Her own table of what carriers take. The rows of a service that hold on a day are those of its latest first day until then.
create table carrier_service (
    id uuid not null,
    name varchar(80) not null,
    place_id uuid not null,
    version bigint default 0 not null,
    constraint carrier_service_pk primary key (id),
    constraint carrier_service_name_uk unique (name),
    constraint carrier_service_place_fk foreign key (place_id) references money_place (id)
);

create table carrier_rate (
    service_id uuid not null,
    line integer not null,
    valid_from date not null,
    up_to_g numeric(30, 14) not null,
    up_to_size varchar(60) not null,
    cost_minor bigint not null,
    constraint carrier_rate_pk primary key (service_id, line),
    constraint carrier_rate_service_fk foreign key (service_id) references carrier_service (id) on delete cascade,
    constraint carrier_rate_weight_ck check (up_to_g > 0),
    constraint carrier_rate_cost_ck check (cost_minor >= 0)
);

-- How a sale is sent; no document, because no money moves by it: the day it was sent is the sale's own, what the carrier took is
-- a document of postage.
create table sending (
    sale_id uuid not null,
    picked_up boolean not null,
    packed_on date,
    destination varchar(500) not null,
    size varchar(60) not null,
    weight_g numeric(30, 14),
    service_id uuid,
    tracking varchar(120) not null,
    version bigint default 0 not null,
    constraint sending_pk primary key (sale_id),
    constraint sending_sale_fk foreign key (sale_id) references sale (id) on delete cascade,
    constraint sending_service_fk foreign key (service_id) references carrier_service (id) on delete set null,
    constraint sending_weight_ck check (weight_g > 0)
);

create index sale_posted_ix on sale (posted_on);

-- What went wrong in the mail, and what was claimed of the carrier. What the buyer got back is a refund of the sale; what the
-- carrier paid is other income, and the claim is paid as long as that document is there.
create table mail_loss (
    id uuid not null,
    sale_id uuid not null,
    what varchar(10) not null,
    noticed_on date not null,
    words varchar(1000) not null,
    claimed_on date,
    claimed_minor bigint,
    reference varchar(80) not null,
    refused_on date,
    income_id uuid,
    version bigint default 0 not null,
    constraint mail_loss_pk primary key (id),
    constraint mail_loss_sale_fk foreign key (sale_id) references sale (id) on delete cascade,
    constraint mail_loss_income_fk foreign key (income_id) references other_income (id) on delete set null,
    constraint mail_loss_what_ck check (what in ('LOST', 'DAMAGED')),
    constraint mail_loss_claimed_ck check ((claimed_on is null) = (claimed_minor is null)),
    constraint mail_loss_claim_ck check (claimed_minor > 0),
    constraint mail_loss_refused_ck check (refused_on is null or claimed_on is not null)
);

create index mail_loss_sale_ix on mail_loss (sale_id);
create index mail_loss_income_ix on mail_loss (income_id);

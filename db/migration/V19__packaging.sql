-- What a sale was packed in: supplies that leave the bench with it.
create table sale_wrap (
    sale_id uuid not null,
    line integer not null,
    supply_id uuid not null,
    typed varchar(80) not null,
    quantity numeric(30, 14) not null,
    estimated boolean not null,
    constraint sale_wrap_pk primary key (sale_id, line),
    constraint sale_wrap_sale_fk foreign key (sale_id) references sale (id),
    constraint sale_wrap_supply_fk foreign key (supply_id) references supply (id),
    constraint sale_wrap_quantity_ck check (quantity > 0)
);

-- Her own ways of packing, chosen with one tap. How much is kept as she types it and is read anew for each sale, so that
-- a measure she corrects is right from then on.
create table parcel (
    id uuid not null,
    name varchar(80) not null,
    version bigint default 0 not null,
    constraint parcel_pk primary key (id),
    constraint parcel_name_uk unique (name)
);

create table parcel_wrap (
    parcel_id uuid not null,
    line integer not null,
    supply_id uuid not null,
    typed varchar(80) not null,
    estimated boolean not null,
    constraint parcel_wrap_pk primary key (parcel_id, line),
    constraint parcel_wrap_parcel_fk foreign key (parcel_id) references parcel (id),
    constraint parcel_wrap_supply_fk foreign key (supply_id) references supply (id)
);
